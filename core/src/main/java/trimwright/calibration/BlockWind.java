package trimwright.calibration;

/**
 * The wind over one stretch of straight sailing.
 *
 * @param time of its middle since the clock's start (s)
 * @param side 1 with the wind from starboard, -1 from port
 * @param upwind whether the bow pointed into the wind rather than away
 * @param before by readings as they stand
 * @param after with all that was found taken off, told or not
 */
public record BlockWind(double time, int side, boolean upwind, Wind before, Wind after) {
    /**
     * A wind.
     *
     * @param speed (m/s)
     * @param from where it comes from (rad), compass
     */
    public record Wind(double speed, double from) {}
}
