package trimwright.turn;

/** How a boat comes to her turn. */
public enum TurnBegin {
    /** Flying, and meant to go on flying. */
    FOILS,
    /** Off the foils, kept there up to the driver's word; from then on she flies when she can. */
    HULLS,
    /** Flying up to the driver's word, then let down on purpose: the bow moves when a hull touches, she flies again once the new course is held. */
    LET_DOWN
}
