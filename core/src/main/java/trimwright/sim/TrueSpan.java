package trimwright.sim;

/**
 * A stretch of time in which one thing was true of a boat.
 *
 * @param start (s from the day's zero)
 * @param end (s)
 * @param what {@code straight}, {@code turn} or {@code off_foil}
 * @param kind of straight sailing {@code upwind}, {@code downwind}, {@code direct}, {@code gathering} speed; of a turn its kind;
 *     else empty
 * @param cause of a turn, else empty
 * @param leg -1 before the start
 * @param tack +1 wind from starboard, -1 from port; of a turn the tack after it
 */
public record TrueSpan(double start, double end, String what, String kind, String cause, int leg, int tack) {}
