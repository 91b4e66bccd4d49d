package trimwright.flight;

import trimwright.motion.MotionState;

/**
 * With both main foils down their two rakes hold the heel; what they hold, the wing need not spill. Asks for an acceleration in
 * roll and sets the difference that gives it, by {@link FoilGrip}; what is left over is learned in time. Gains are chosen.
 */
public final class HeelHold {
    /** Time in which a miss of heel is to be made good (s), and of its rate. */
    private static final double ROLL_TIME = 0.8;

    private static final double RATE_TIME = 0.12;
    /** Time in which what is left over is learned (s). */
    private static final double LEARNING = 0.4;
    /** Fastest roll that is asked for (rad/s). */
    private static final double ROLL_MOST = Math.toRadians(6);
    /** Most that each rake departs from the mean (rad). */
    public static final double SPREAD_MOST = Math.toRadians(6);

    /** Ride height up to which only so much is used, and from which all (m, rad). */
    private static final double LOW = 0.1;

    private static final double HIGH = 0.5;
    private static final double LOW_SPREAD = Math.toRadians(2);

    private final FoilGrip grip;
    private double learned;

    public HeelHold(FoilGrip grip) {
        this.grip = grip;
    }

    /** One that goes on from here by itself. */
    public HeelHold copy() {
        HeelHold other = new HeelHold(grip);
        other.learned = learned;
        return other;
    }

    /**
     * How much more the port rake, and less the starboard one, is than their mean (rad), for a
     * roll (rad) at a ride height (m).
     */
    public double spread(MotionState state, double rideHeight, double roll, double dt) {
        double rate =
                Math.max(-ROLL_MOST, Math.min(ROLL_MOST, (roll - state.pose().roll()) / ROLL_TIME));
        double miss = rate - state.rates().roll();
        double forAcceleration = miss / RATE_TIME / grip.roll(state);
        double most = most(rideHeight);
        learned = within(learned + forAcceleration / LEARNING * dt, most);
        return within(learned + forAcceleration, most);
    }

    /** Near the water both foils are needed for getting out of it: one that is pushed down holds her there. */
    private static double most(double rideHeight) {
        double clear = (rideHeight - LOW) / (HIGH - LOW);
        return LOW_SPREAD + (SPREAD_MOST - LOW_SPREAD) * Math.max(0, Math.min(1, clear));
    }

    /** Goes on from that spread (rad). */
    public void learn(double spread) {
        learned = within(spread, SPREAD_MOST);
    }

    private static double within(double spread, double most) {
        return Math.max(-most, Math.min(most, spread));
    }
}
