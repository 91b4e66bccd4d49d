package trimwright.sim;

/**
 * What one boat's instruments say at one instant, NaN where one is silent; SI, signed form.
 *
 * @param time since the day's zero (s)
 * @param fix place and way over ground
 * @param attitude how she lies
 * @param wind apparent wind
 * @param wing gauges of the wing
 */
public record Reading(double time, Fix fix, Attitude attitude, Wind wind, Wing wing) {
    /**
     * @param north of the antenna (m)
     * @param east of the antenna (m)
     * @param speed over ground (m/s)
     * @param course over ground (rad)
     */
    public record Fix(double north, double east, double speed, double course) {
        static final Fix SILENT = new Fix(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    /**
     * @param heading (rad)
     * @param rateOfTurn (rad/s)
     * @param roll (rad)
     * @param pitch (rad)
     */
    public record Attitude(double heading, double rateOfTurn, double roll, double pitch) {
        static final Attitude SILENT = new Attitude(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    /**
     * @param speed (m/s)
     * @param angle as the sensor gives it, from the wing's chord if it turns with the wing (rad)
     */
    public record Wind(double speed, double angle) {
        static final Wind SILENT = new Wind(Double.NaN, Double.NaN);
    }

    /**
     * @param camber (rad)
     * @param twist (rad)
     * @param sheet (rad)
     * @param sheetLoad (N)
     * @param rideHeight (m)
     */
    public record Wing(double camber, double twist, double sheet, double sheetLoad, double rideHeight) {
        static final Wing SILENT = new Wing(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }
}
