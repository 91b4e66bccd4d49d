package trimwright.fleet;

/** What is compared between boats. */
public enum Question {
    /** Progress against the fleet's wind, up or down it (m/s). */
    PROGRESS(Family.SPEED),
    /** Metres that a tack or gybe lost against sailing on (m). */
    TURN(Family.SPEED),
    /** Wind from the course sailed, free of the tack (rad). */
    ANGLE(Family.TRIM),
    /** Flap angle at the foot, free of the tack (rad). */
    CAMBER(Family.TRIM),
    /** Camber less the flap angle at the head (rad). */
    TWIST(Family.TRIM),
    /** Apparent wind at the sensor less the sheet's angle: how far the wing is sheeted into the wind (rad). */
    INCIDENCE(Family.TRIM),
    /** To windward (rad). */
    HEEL(Family.TRIM),
    /** How far heel swings about its mean of 20 s (rad): late hands let it swing. */
    HEEL_SWING(Family.TRIM),
    /** Bottom of the hulls above the water (m). */
    RIDE_HEIGHT(Family.TRIM),
    /** At the wing (N). */
    SHEET_LOAD(Family.TRIM);

    private final Family family;

    /** Questions that are asked together: chance is shared out among them. */
    public enum Family {
        /** Who is faster. */
        SPEED,
        /** Who trims otherwise: says nothing of speed. */
        TRIM
    }

    Question(Family family) {
        this.family = family;
    }

    public Family family() {
        return family;
    }
}
