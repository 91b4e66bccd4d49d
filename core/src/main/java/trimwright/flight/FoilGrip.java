package trimwright.flight;

import trimwright.boat.Boat;
import trimwright.motion.MotionState;

/**
 * How strongly foils answer at the present speed: acceleration for each radian of their incidence, as a crew knows it from the
 * boat file, roughly. Exact masses are the motion's; what this misses is learned by whoever uses it.
 */
public final class FoilGrip {
    /** Lift slope of a foil in its place (1/rad): some seven tenths of two pi, for its span, chosen. */
    private static final double SLOPE = 4.5;
    /** Radius of gyration in pitch over the length overall, and in roll over the hulls' spacing (-): chosen, near the motion's. */
    private static final double PITCH_GYRATION = 0.35;

    private static final double ROLL_GYRATION = 0.68;
    /** Density of the sea (kg/m3). */
    private static final double DENSITY = 1025;
    /** Slower than this nothing flies (m/s). */
    private static final double LEAST_SPEED = 5;

    private final double heave;
    private final double pitch;
    private final double roll;

    public FoilGrip(Boat boat) {
        double mass = boat.platform().mass()
                + boat.wings().get(0).mass()
                + boat.crew().mass();
        double tip = SLOPE * boat.mainFoil().tipArea();
        double elevators = SLOPE * 2 * boat.rudder().elevatorArea();
        heave = tip / mass;
        pitch = elevators
                * -boat.rudder().x()
                / (mass * StrictMath.pow(PITCH_GYRATION * boat.hulls().lengthOverall(), 2));
        roll = 2
                * tip
                * boat.mainFoil().yLift()
                / (mass * StrictMath.pow(ROLL_GYRATION * boat.hulls().spacing(), 2));
    }

    /** Upward acceleration for each radian of rake of the foils that are down (m/s2). */
    double heave(MotionState state) {
        double boards = state.controls().portBoard() + state.controls().starboardBoard();
        return pressure(state) * Math.max(1, boards) * heave;
    }

    /** Bow-down angular acceleration for each radian of the mean elevator (1/s2). */
    double pitch(MotionState state) {
        return pressure(state) * pitch;
    }

    /** Angular acceleration, starboard down, for each radian of port rake more and starboard rake less (1/s2). */
    double roll(MotionState state) {
        return pressure(state) * roll;
    }

    /** Speed of the flow (m/s), not less than that of a boat that barely flies. */
    static double speed(MotionState state) {
        return Math.max(LEAST_SPEED, state.rates().speed());
    }

    private static double pressure(MotionState state) {
        return 0.5 * DENSITY * speed(state) * speed(state);
    }
}
