package trimwright.crew;

/**
 * A turn from the order to the driver's word that the new course is held.
 *
 * @param order what was ordered
 * @param end (s)
 * @param inverted when the camber was ordered over (s); NaN where it stayed
 */
public record DoneTurn(TurnOrder order, double end, double inverted) {}
