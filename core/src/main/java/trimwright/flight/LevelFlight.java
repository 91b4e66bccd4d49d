package trimwright.flight;

import trimwright.boat.Boat;
import trimwright.motion.MotionState;

/**
 * Keeps height and pitch of a boat that flies: the rakes together give the climb, the elevators together the pitch. Both ask
 * for an acceleration and set the angle that gives it at the present speed, by {@link FoilGrip}; what is left over is learned in
 * time. Acts at once, without a person's delay, but through controls that need time. Gains are chosen.
 */
public final class LevelFlight {
    /** Time in which a miss of height is to be made good (s), and of climb. */
    private static final double HEIGHT_TIME = 1.2;

    private static final double CLIMB_TIME = 0.2;
    /** Fastest climb or fall that is asked for (m/s), and steepest: climb over speed (-). */
    private static final double CLIMB_MOST = 0.5;

    private static final double STEEPEST = 0.03;
    /** Time in which what is left over of the rake is learned (s), and of the elevator. */
    private static final double RAKE_LEARNING = 1.0;

    /** Time in which what a foil at its end cannot give is forgotten (s). */
    private static final double UNLEARNING = 0.3;

    private static final double PITCH_LEARNING = 1.5;
    /** Swing of pitch that is added to the elevators' own (rad/s), and its damping (1/s). */
    private static final double PITCH_SWING = 4;

    private static final double PITCH_DAMPING = 5;
    /** Most of a miss of pitch that is worked against (rad): more would ask for rates that the elevators do not have. */
    private static final double PITCH_MISS_MOST = Math.toRadians(1);
    /** Most that the bow is put down or up where the rakes are at their end (rad), how much for what they lack (-), how fast (s). */
    private static final double BOW_DOWN_MOST = Math.toRadians(3);

    private static final double BOW_UP_MOST = Math.toRadians(2);
    /** Ride height from which the bow is put up (m): with a hull in the water the elevators would push her down for it. */
    private static final double CLEAR = 0;

    private static final double BOW_HELP = 1.5;
    private static final double BOW_TIME = 0.3;

    private final Boat boat;
    private final FoilGrip grip;

    private double learnedRake = Math.toRadians(2);
    private double climbing;
    private double learnedElevator;
    private double pitchedUp;
    private double bowUp;

    public LevelFlight(Boat boat, FoilGrip grip) {
        this.boat = boat;
        this.grip = grip;
    }

    /** Begins with these angles (rad): mean rake and mean elevator. */
    public void begin(double rake, double elevator) {
        learnedRake = rake;
        learnedElevator = elevator;
    }

    /** One that goes on from here by itself. */
    public LevelFlight copy() {
        LevelFlight other = new LevelFlight(boat, grip);
        other.learnedRake = learnedRake;
        other.climbing = climbing;
        other.learnedElevator = learnedElevator;
        other.pitchedUp = pitchedUp;
        other.bowUp = bowUp;
        return other;
    }

    /** Mean rake of the foils that are down (rad). */
    public double rake() {
        return rakeWithin(learnedRake + climbing);
    }

    /** From now on that mean rake (rad): another foil begins or ends to carry. */
    public void rake(double mean) {
        learnedRake = mean - climbing;
    }

    /** Both foils are at this mean (rad), which is not what was asked for where one is at its end: no more is learned of that. */
    public void reached(double mean, double dt) {
        learnedRake += Math.min(1, dt / UNLEARNING) * Math.min(0, mean - rake());
    }

    /** The rake goes there (rad) at a rate (rad/s): on the hulls. */
    public void drift(double rake, double rate, double dt) {
        climbing = 0;
        learnedRake += Math.max(-rate * dt, Math.min(rate * dt, rake - learnedRake));
    }

    /** Rakes for a ride height, from the one that is (m). */
    public void climb(MotionState state, double rideHeight, double wantedHeight, double dt) {
        double most = Math.min(CLIMB_MOST, STEEPEST * state.rates().speed());
        double climb = Math.max(-most, Math.min(most, (wantedHeight - rideHeight) / HEIGHT_TIME));
        double miss = climb - state.rates().climb();
        double forAcceleration = miss / CLIMB_TIME / grip.heave(state);
        double speed = FoilGrip.speed(state);
        double path = climb / speed;
        // A climb needs as much more incidence as the path is steeper, and a bow that is up as much less rake.
        climbing = forAcceleration + path - pitchedUp;
        double lacking = learnedRake + climbing - rake();
        double wanted = Math.max(-BOW_DOWN_MOST, Math.min(rideHeight > CLEAR ? BOW_UP_MOST : 0, BOW_HELP * lacking));
        bowUp += Math.min(1, dt / BOW_TIME) * (wanted - bowUp);
        learnedRake = rakeWithin(learnedRake + (forAcceleration + miss / speed) / RAKE_LEARNING * dt);
    }

    /** Mean elevator (rad) for a pitch (rad): positive lifts the stern. */
    public double level(MotionState state, double pitch, double dt) {
        pitchedUp = state.pose().pitch() - pitch;
        double miss = Math.max(-PITCH_MISS_MOST, Math.min(PITCH_MISS_MOST, pitchedUp - bowUp));
        double stiff = PITCH_SWING * PITCH_SWING / grip.pitch(state);
        // Flow that comes from above in a climb unloads the elevators as much.
        double path = state.rates().climb() / FoilGrip.speed(state);
        double damped = PITCH_DAMPING / grip.pitch(state);
        learnedElevator = elevatorWithin(learnedElevator + stiff * miss / PITCH_LEARNING * dt);
        return elevatorWithin(
                learnedElevator + path + stiff * miss + damped * state.rates().pitch());
    }

    /** On the hulls nothing is held: what was learned of the elevator is forgotten. */
    public void letPitchGo() {
        learnedElevator = 0;
        pitchedUp = 0;
    }

    private double elevatorWithin(double elevator) {
        double most = boat.rudder().elevatorAngleMax();
        return Math.max(-most, Math.min(most, elevator));
    }

    /** The nearest rake that a foil has (rad). */
    public double rakeWithin(double rake) {
        return Math.max(boat.mainFoil().rakeMin(), Math.min(boat.mainFoil().rakeMax(), rake));
    }
}
