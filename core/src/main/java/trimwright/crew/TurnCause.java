package trimwright.crew;

/** Why a crew turned. */
public enum TurnCause {
    /** Its own choice: shift, lay line, clear air. */
    FREE,
    /** The edge of the course. */
    BOUNDARY,
    /** Rounding. */
    MARK,
    /** Another boat. */
    TRAFFIC
}
