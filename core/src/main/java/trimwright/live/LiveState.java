package trimwright.live;

/** What the boat is doing, as far as it rules what a glance may be given. */
public enum LiveState {
    /** Nothing fresh to tell it by. */
    NO_DATA,
    /** Hardly moving. */
    DOCK,
    /** Straight on, and nothing tells whether on the foils. */
    STRAIGHT,
    ON_FOILS,
    OFF_FOILS,
    /** Turning, or over on her side: nobody should look at a screen. */
    EYES_OUT
}
