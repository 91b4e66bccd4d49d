package trimwright.call;

/**
 * What lies ahead, as far as it is known; NaN where it is not.
 *
 * @param start time to the start (s), negative after it
 * @param turn time to the next expected turn (s)
 * @param boat distance to the nearest other boat (m)
 * @param boundary distance to the boundary (m)
 */
public record Around(double start, double turn, double boat, double boundary) {
    /** Nothing known. */
    public static final Around NOTHING_KNOWN = new Around(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
}
