package trimwright.calibration;

/** What is solved for, each with what is known of it before any data and how sure it must be to be used. */
public enum Unknown {
    /** Added to the wind angle by the sensor itself (rad), positive to starboard. */
    WIND_ANGLE(Math.toRadians(10), Math.toRadians(1)),
    /** Turn of the wind at the sensor by the wing, away from the bow, at the day's typical trim (rad). */
    UPWASH(Math.toRadians(5), Math.toRadians(1)),
    /** Wind speed read over true (-), less 1. */
    WIND_SPEED(0.2, 0.03),
    /** Added to the heading (rad). */
    COMPASS(Math.toRadians(10), Math.toRadians(1)),
    /** Speed through the water read over true (-), less 1. */
    BOAT_SPEED(0.2, 0.03),
    /** Leeway at the day's typical ratio of wind to water pressure (rad), to leeward. */
    LEEWAY(Math.toRadians(10), Math.toRadians(1)),
    /** Added to the signed camber (rad). */
    CAMBER(Math.toRadians(10), Math.toRadians(1)),
    /** Added to the signed sheet (rad). */
    SHEET(Math.toRadians(10), Math.toRadians(1)),
    /** Added to the signed twist (rad). */
    TWIST(Math.toRadians(10), Math.toRadians(1)),
    /** Direction of the true wind at the head less that at the foot (rad), positive when it veers with height. */
    VEER(Math.toRadians(10), Math.toRadians(1));

    private final double before;
    private final double sure;

    Unknown(double before, double sure) {
        this.before = before;
        this.sure = sure;
    }

    /** Standard deviation before any data (rad, -), chosen: wide of any fault that a sensor is sailed with. */
    double before() {
        return before;
    }

    /** Standard error up to which it counts as told (rad, -), chosen: what a debrief bears. */
    double sure() {
        return sure;
    }

    /** Whether it is a share and not an angle. */
    public boolean isRatio() {
        return this == WIND_SPEED || this == BOAT_SPEED;
    }
}
