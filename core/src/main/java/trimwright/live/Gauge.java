package trimwright.live;

/**
 * A control against its aim, free of the tack (rad).
 *
 * @param value now; NaN where not known
 * @param low lower end of the band that costs under half a per cent
 * @param aim the trim that gusts disturb least
 * @param high upper end of the band
 */
public record Gauge(double value, double low, double aim, double high) {
    /** Nothing known. */
    public static final Gauge NONE = new Gauge(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
}
