package trimwright.call;

/** Why nothing is said. In order: the first that holds is told. */
public enum Silence {
    /** The event allows no calls. */
    NOT_ALLOWED,
    /** Instruments that calls need are silent or frozen. */
    DATA,
    /** No target for this wind and angle, or no boat file. */
    NO_TARGET,
    /** Turning, or over on her side. */
    TURNING,
    /** At rest or off the foils: everybody knows what to do first. */
    NOT_FLYING,
    /** The last minute before the start. */
    START,
    /** A turn is near. */
    TURN_AHEAD,
    /** Another boat is near. */
    TRAFFIC,
    /** The boundary is near. */
    BOUNDARY,
    /** Averages are not full since the last of the above. */
    SETTLING,
    /** A limit is passed or near: that is told by a tone. */
    LIMIT,
    /** The last call is not long enough ago to show its effect. */
    RESTING,
    /** This leg has had its calls. */
    LEG_FULL,
    /** Nothing is lost that the data can show, or no single change promises enough. */
    NOTHING_TO_SAY
}
