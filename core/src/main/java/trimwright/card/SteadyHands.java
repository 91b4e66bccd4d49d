package trimwright.card;

import trimwright.boat.Boat;
import trimwright.flight.FoilGrip;
import trimwright.flight.LevelFlight;
import trimwright.motion.Controls;
import trimwright.motion.MotionState;
import trimwright.units.Angles;

/**
 * Driver and flight controller of a boat with the wind from starboard and the port foil down: they hold a heading, a ride height
 * and a pitch, and touch nothing else. The laws and gains are those of the simulated crew's people, on one tack; chosen. For one
 * run.
 */
final class SteadyHands {
    private static final double HEADING_TIME = 0.8;
    private static final double TURN_MOST = Math.PI / 15;
    private static final double TURN_GAIN = 1.1;
    private static final double TURN_HOLD = 0.7;
    private static final double RUDDER_MOST = Math.PI / 12;

    /** Speed at which the driver's gain is one (m/s). */
    private static final double USUAL = 12;

    private final LevelFlight level;
    private double rudder;

    /** They begin with the controls where these are. */
    SteadyHands(Boat boat, Controls now) {
        level = new LevelFlight(boat, new FoilGrip(boat));
        level.begin(now.portRake(), now.elevator());
        rudder = now.rudder();
    }

    /** Rudder for a heading (rad). */
    double rudder(MotionState now, double heading, double dt) {
        double error = Angles.difference(heading, now.pose().heading());
        double rate = clamp(error / HEADING_TIME, -TURN_MOST, TURN_MOST);
        double miss = rate - now.rates().yaw();
        double gain = Math.min(2.5, USUAL / Math.max(3, now.rates().speed()));
        rudder = clamp(rudder + TURN_HOLD * gain * miss * dt, -RUDDER_MOST, RUDDER_MOST);
        return clamp(gain * TURN_GAIN * miss + rudder, -RUDDER_MOST, RUDDER_MOST);
    }

    /** Rake of the leeward foil for a ride height (m). */
    double rake(MotionState now, double rideHeight, double wanted, double dt) {
        level.climb(now, rideHeight, wanted, dt);
        return level.rake();
    }

    /** Rake that goes toward a value (rad) no faster than that (rad/s), the height left to itself. */
    double rakeToward(double wanted, double most, double dt) {
        level.drift(wanted, most, dt);
        return level.rake();
    }

    /** Mean elevator for a pitch (rad). */
    double elevator(MotionState now, double pitch, double dt) {
        return level.level(now, pitch, dt);
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
