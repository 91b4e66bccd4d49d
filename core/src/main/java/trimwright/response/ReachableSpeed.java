package trimwright.response;

/**
 * The speed that a well trimmed boat would have by now: targets of the last half minute passed through her own response.
 * It begins at the speed that she has and goes on second by second; not thread-safe.
 */
public final class ReachableSpeed {
    /** Without a target for longer it begins anew (s, chosen: what is left of the last one is then worth little). */
    private static final double LONGEST_GAP = 10;

    private final SpeedResponse response;
    private double speed = Double.NaN;
    private double gap;

    public ReachableSpeed(SpeedResponse response) {
        this.response = response;
    }

    /** Begins anew at the next step. */
    public void forget() {
        speed = Double.NaN;
        gap = 0;
    }

    /**
     * Goes on.
     *
     * @param boatSpeed where it begins, if it does now (m/s); NaN where not known
     * @param target at the angle sailed in the wind of now (m/s); NaN without one
     * @param wind true (m/s)
     * @param angle of the true wind from the course (rad), either tack
     * @param dt (s)
     * @return the reachable speed (m/s); NaN before the first target
     */
    public double step(double boatSpeed, double target, double wind, double angle, double dt) {
        if (Double.isNaN(target)) {
            gap += dt;
            if (gap > LONGEST_GAP) {
                speed = Double.NaN;
            }
            return speed;
        }
        gap = 0;
        if (Double.isNaN(speed)) {
            speed = boatSpeed;
            return speed;
        }
        SpeedResponse.Row row = response.at(wind, angle);
        double time = target > speed ? row.rise() : row.fall();
        speed = followed(speed, target, time, dt);
        return speed;
    }

    /** What a first-order response of that time makes of a target that stands still for a step. */
    static double followed(double speed, double target, double time, double dt) {
        return target + (speed - target) * StrictMath.exp(-dt / time);
    }
}
