package trimwright.card;

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
    private static final double HEIGHT_TIME = 1.2;
    private static final double CLIMB_MOST = 0.5;
    private static final double CLIMB_GAIN = 8;
    private static final double PITCH_HOLD = 0.6;
    private static final double PITCH_GAIN = 0.8;
    private static final double PITCH_DAMPING = 0.4;

    /** Speed at which the driver's gain is one (m/s). */
    private static final double USUAL = 12;

    private final double rakeMin;
    private final double rakeMax;
    private final double elevatorMax;
    private double rudder;
    private double rake;
    private double elevator;

    /** They begin with the controls where these are. */
    SteadyHands(Controls now, double rakeMin, double rakeMax, double elevatorMax) {
        this.rakeMin = rakeMin;
        this.rakeMax = rakeMax;
        this.elevatorMax = elevatorMax;
        rudder = now.rudder();
        rake = now.portRake();
        elevator = now.elevator();
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
        double climb = clamp((wanted - rideHeight) / HEIGHT_TIME, -CLIMB_MOST, CLIMB_MOST);
        double miss = climb - now.rates().climb();
        rake += CLIMB_GAIN * miss / Math.max(5, now.rates().speed()) * dt;
        rake = clamp(rake, rakeMin, rakeMax);
        return rake;
    }

    /** Rake that goes toward a value (rad) no faster than that (rad/s), the height left to itself. */
    double rakeToward(double wanted, double most, double dt) {
        rake = clamp(rake + clamp(wanted - rake, -most * dt, most * dt), rakeMin, rakeMax);
        return rake;
    }

    /** Mean elevator for a pitch (rad). */
    double elevator(MotionState now, double pitch, double dt) {
        double miss = now.pose().pitch() - pitch;
        elevator = clamp(elevator + PITCH_HOLD * miss * dt, -elevatorMax, elevatorMax);
        double asked =
                elevator + PITCH_GAIN * miss + PITCH_DAMPING * now.rates().pitch();
        return clamp(asked, -elevatorMax, elevatorMax);
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
