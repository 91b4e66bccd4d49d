package trimwright.crew;

import trimwright.motion.MotionLoads;
import trimwright.motion.MotionState;
import trimwright.units.Angles;

/**
 * What a crew sees and feels of its own boat at one instant.
 *
 * @param time since the race's zero (s)
 * @param state of the boat
 * @param loads of the boat
 * @param rideHeight bottom of the hulls above the water (m)
 * @param windSpeed true wind at 10 m, settled over some seconds (m/s)
 * @param windFrom direction of that wind, clockwise from north (rad)
 * @param felt apparent wind at 10 m now
 */
public record Sight(
        double time,
        MotionState state,
        MotionLoads loads,
        double rideHeight,
        double windSpeed,
        double windFrom,
        Felt felt) {
    /**
     * Apparent wind, to the bow.
     *
     * @param speed (m/s)
     * @param angle positive from starboard (rad)
     */
    public record Felt(double speed, double angle) {}

    public double heading() {
        return state.pose().heading();
    }

    public double speed() {
        return state.rates().speed();
    }

    /** Direction of motion through the water, clockwise from north (rad). */
    public double course() {
        return heading()
                + StrictMath.atan2(
                        state.rates().sway(), Math.max(0.1, state.rates().surge()));
    }

    /** True wind angle to the bow (rad), positive from starboard. */
    public double trueWindAngle() {
        return Angles.signed(windFrom - heading());
    }

    /** +1 with the wind from starboard, -1 from port. */
    public int tack() {
        return trueWindAngle() >= 0 ? 1 : -1;
    }

    /** Whether she flies: the middle of the boat clear of the water. */
    public boolean isFlying() {
        return rideHeight > 0.15;
    }
}
