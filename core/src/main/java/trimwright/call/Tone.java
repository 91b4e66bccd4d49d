package trimwright.call;

/** What is told by a sound and not by words. */
public enum Tone {
    NONE,
    /** A limit is passed or near: moment, heel to leeward, speed. */
    LIMIT,
    /** Too little moment: she comes over to windward. */
    WINDWARD
}
