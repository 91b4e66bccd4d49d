package trimwright.call;

/** What is shown before a start, by the seconds to spare. */
public enum StartWord {
    /** Seconds are to be lost. */
    HOLD,
    /** None is left. */
    GO
}
