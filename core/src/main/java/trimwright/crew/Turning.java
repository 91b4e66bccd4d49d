package trimwright.crew;

/** How tacks and gybes are made. */
public enum Turning {
    /** As a boat must. */
    SAILED,
    /** At once and for nothing, the boat as in a mirror: to see what turns cost. */
    AT_ONCE
}
