package trimwright.crew;

/**
 * One turn as it was ordered.
 *
 * @param kind what it does
 * @param cause why
 * @param start time of the order (s)
 * @param toTack tack after it: +1 wind from starboard, -1 from port
 */
public record TurnOrder(TurnKind kind, TurnCause cause, double start, int toTack) {}
