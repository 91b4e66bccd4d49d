package trimwright.ingest;

/** What can be wrong with a piece of a log, and what the readers do about it. */
public enum IssueKind {
    /** The checksum does not fit; the sentence is left out. */
    BAD_CHECKSUM,
    /** A sentence without checksum; left out unless asked for. */
    NO_CHECKSUM,
    /** Bytes below 0x20 inside a sentence, which a checksum may not see; left out. */
    CONTROL_BYTES,
    /** A second sentence begins inside the first; the first is left out. */
    MERGED,
    /** A line that holds no sentence; left out. */
    NOT_A_SENTENCE,
    /** A line that holds no frame of a bus; left out. */
    NOT_A_FRAME,
    /** A line that holds no delta of Signal K; left out. */
    NOT_A_DELTA,
    /** Values of another vessel; left out. */
    OTHER_VESSEL,
    /** A document that cannot be read as GPX. */
    NOT_GPX,
    /** A message of several frames of which one is missing; left out. */
    BROKEN_MESSAGE,
    /** A line or row longer than any that a logger writes; left out. */
    TOO_LONG,
    /** A TAG block whose checksum does not fit; its time is not used, the sentence is. */
    BAD_TAG,
    /** A field that should be a number and is not; its value is absent, the rest of the line is used. */
    BAD_NUMBER,
    /** A number that its field cannot hold, as a minute of 75; absent, the rest of the line is used. */
    IMPOSSIBLE_VALUE,
    /** A time that cannot be read; the sentence gives no time, a row of a table is left out. */
    BAD_TIME,
    /** A date that cannot be, as month 0; the date known before stays. */
    BAD_DATE,
    /** The same sentence with the same time and values again; one of them is kept. */
    REPEAT,
    /** A sample whose time does not come after that of the one before it; left out. */
    TIME_NOT_RISING,
    /** A single time far from its neighbours; left out. */
    CLOCK_OUTLIER,
    /** The clock went back for good; where the two stretches overlap the longer one is kept. */
    CLOCK_STEP,
    /** The date was wrong by whole cycles of 1024 weeks and was put right by the given start. */
    DATE_CYCLE,
    /** A transducer whose name is not known; left out. */
    UNKNOWN_TRANSDUCER,
    /** A row with fewer cells than the mapping names; the missing ones are absent. */
    SHORT_ROW,
    /** A record of a journal whose source is not declared, or of a kind that is not known; left out. */
    UNKNOWN_SOURCE,
    /** The end of a journal is not whole, as after a crash; what lies behind its last whole record is not read. */
    BROKEN_OFF
}
