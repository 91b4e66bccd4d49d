package trimwright.crew;

/**
 * What makes one crew's race differ from another's without costing much: drawn, not judged.
 *
 * @param shift header on which it tacks, lift on which it gybes (rad)
 * @param overstand angle beyond the lay line at which it turns for the mark (rad)
 * @param startShare where it crosses the start line, from the port end (-), inside 0 to 1
 * @param gateShare where it goes through a gate or over a line, from the port end (-), inside 0 to 1
 * @param startMargin lateness that it plans for at the gun (s)
 */
public record Temper(double shift, double overstand, double startShare, double gateShare, double startMargin) {}
