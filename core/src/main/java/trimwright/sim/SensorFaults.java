package trimwright.sim;

/**
 * What is wrong with one boat's instruments, beside noise and quantisation, which all share.
 *
 * @param wind of the wind sensor
 * @param attitude of compass and clinometer
 * @param wing of the wing's gauges
 * @param dropoutsPerHour how often one of the logged groups falls silent (-)
 */
public record SensorFaults(WindFault wind, AttitudeFault attitude, WingFault wing, double dropoutsPerHour) {
    public static final SensorFaults NONE =
            new SensorFaults(new WindFault(0, 1, 0, 0), new AttitudeFault(0, 0, 0), new WingFault(0, 0, 0, 1, 0), 0);

    /**
     * @param angle added to the wind angle (rad)
     * @param speedFactor on the wind speed (-)
     * @param upwash angle that the wing's lift adds, over its lift coefficient (rad)
     * @param lag of a first-order sensor (s)
     */
    public record WindFault(double angle, double speedFactor, double upwash, double lag) {}

    /**
     * @param compass added to the heading (rad)
     * @param roll added to the roll (rad)
     * @param pitch added to the pitch (rad)
     */
    public record AttitudeFault(double compass, double roll, double pitch) {}

    /**
     * @param camber added to the signed camber (rad): the wing's own zero
     * @param twist added to the signed twist (rad)
     * @param sheet added to the signed sheet (rad)
     * @param loadFactor on the sheet load (-)
     * @param rideHeight added to the ride height (m)
     */
    public record WingFault(double camber, double twist, double sheet, double loadFactor, double rideHeight) {}
}
