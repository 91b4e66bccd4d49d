package trimwright.segment;

/** Why a turn was made, as course and fleet show it. */
public enum TurnLabel {
    /** Nothing that is known of forced it. */
    FREE,
    /** The edge of the course lay ahead. */
    BOUNDARY,
    /** A mark or gate was rounded. */
    MARK,
    /** Another boat was in the way. */
    TRAFFIC;

    /** Whether the boat had no choice of the moment. */
    public boolean isForced() {
        return this != FREE;
    }
}
