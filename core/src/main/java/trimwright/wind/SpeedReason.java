package trimwright.wind;

/** Why a boat speed was chosen. */
public enum SpeedReason {
    /** The user asked for it. */
    ASKED_FOR,
    /** A foiling boat's log is dry or in bubbles above take-off. */
    FOILING_BOAT,
    /** No log speed, or one that covers less than half of the time. */
    NO_LOG,
    /** The log stands near zero while the boat moves over ground. */
    LOG_DRY,
    /** The log covers the time and agrees with motion over ground. */
    LOG_WET,
    /** No speed over ground. */
    NO_GROUND_SPEED
}
