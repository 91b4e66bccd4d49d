package trimwright.platform;

/**
 * The numbers that describe a steady state. Each has a scale: a change by that much is large. The first six are what the
 * six equations settle when the others are given.
 */
public enum Variable {
    /** Through the water (m/s). */
    BOAT_SPEED(5),
    /** From bow to course through the water (rad), positive to leeward. */
    LEEWAY(0.1),
    /** Rudder angle (rad), positive where it turns the bow away from the wind, as needed against weather helm. */
    RUDDER(0.1),
    /** Incidence of the main foil's tip (rad). */
    MAIN_RAKE(0.1),
    /** Mean incidence of the two elevators (rad), nose up. */
    ELEVATOR(0.1),
    /** Angle of the main element to the centreline (rad), positive eased. */
    SHEET(0.2),
    /** Flap angle at the foot (rad). */
    CAMBER(0.2),
    /** Camber less the flap angle at the head (rad). */
    TWIST(0.2),
    /** Share of the twist reached at half height (-). */
    TWIST_MID_RATIO(0.5),
    /** Positive to windward (rad). */
    HEEL(0.1),
    /** Bottom of the hulls above the undisturbed water, at the origin of the body axes (m). */
    RIDE_HEIGHT(0.5),
    /** Positive bow up (rad). */
    PITCH(0.05),
    /** Leeward elevator's incidence less the mean, and the mean less the windward one's (rad). */
    ELEVATOR_DIFFERENTIAL(0.1),
    /** Place of the crew's centre to windward of the centreline (m). */
    CREW_PLACE(4),
    /** From the course through the water (rad), 0 to pi. */
    TRUE_WIND_ANGLE(0.3);

    private static final Variable[] ALL = values();

    private final double scale;

    Variable(double scale) {
        this.scale = scale;
    }

    /** A large change, in the variable's own unit. */
    public double scale() {
        return scale;
    }

    public static int count() {
        return ALL.length;
    }

    static Variable at(int index) {
        return ALL[index];
    }
}
