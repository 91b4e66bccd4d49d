package trimwright.track;

/** What is known about one sample. Stored as the ordinal, so new members go at the end. */
public enum Quality {
    /** Nothing speaks against it. */
    GOOD,
    /** No sample at this time; the value is NaN. */
    ABSENT,
    /** The value has not moved for longer than this channel's sensor can stand still. */
    FROZEN,
    /** The value moved faster than the quantity can. */
    JUMP,
    /** Outside what the quantity can be. */
    OUT_OF_RANGE,
    /** Its time was repaired. */
    TIME_REPAIRED
}
