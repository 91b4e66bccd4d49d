package trimwright.crew;

import trimwright.units.Angles;

/** Steers to a heading: asks for a rate of turn that shrinks with the error, and puts the rudder where the rate comes. */
final class Driver {
    /** Straight-line rudder range is the boat file's; in turns a driver uses more: chosen. */
    private static final double MOST = Math.toRadians(16);

    private static final double HEADING_TIME = 0.8;
    private static final double RATE_GAIN = 1.1;
    private static final double RATE_HOLD = 0.7;

    private double held;

    Driver copy() {
        Driver other = new Driver();
        other.held = held;
        return other;
    }

    /** From now on the other tack. */
    void mirror() {
        held = -held;
    }

    /**
     * Signed rudder to ask for (rad).
     *
     * @param heading to steer (rad)
     * @param most rate of turn (rad/s)
     * @param dt step (s)
     */
    double steer(Sight sight, double heading, double most, double dt) {
        double error = Angles.difference(heading, sight.heading());
        double rate = Math.max(-most, Math.min(most, error / HEADING_TIME));
        double miss = rate - sight.state().rates().yaw();
        // At speed the same rudder turns more: gain by the inverse of speed, referred to 12 m/s.
        double gain = Math.min(2.5, 12 / Math.max(3, sight.speed()));
        held = clamp(held + RATE_HOLD * gain * miss * dt, Math.toRadians(8));
        return clamp(gain * RATE_GAIN * miss + held, MOST);
    }

    private static double clamp(double value, double most) {
        return Math.max(-most, Math.min(most, value));
    }
}
