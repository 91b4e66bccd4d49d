package trimwright.ingest;

/** What a reader of the data should know about how it was read. */
public enum IngestNote {
    /** Every line carries the logger's own time, and that is used. */
    TIME_FROM_STAMPS,
    /** Stamps without a zone, taken as UTC. */
    STAMPS_WITHOUT_ZONE,
    /** The stamps and the satellite time in the sentences differ by more than two seconds; the stamps are used. */
    STAMPS_DIFFER_FROM_SATELLITES,
    /** Time from the sentences that carry it; the others lie between by their place in the log. */
    TIME_FROM_SENTENCES,
    /** The log has times of day only; the date is that of the given start. */
    DATE_FROM_START,
    /** No time at all in the log: it begins at the given start and is spaced as a 4800 baud line would carry it. */
    SPACING_ASSUMED,
    /** No time at all in a log of a bus: it begins at the given start, spaced by the messages' nominal intervals. */
    SPACING_OF_MESSAGES,
    /** Two-digit years only: 80 to 99 are taken as 19xx, 00 to 79 as 20xx. */
    CENTURY_ASSUMED,
    /** Two-digit years, with the century of the four-digit date that the log also has. */
    CENTURY_FROM_LOG,
    /** Only sentences marked void give the time. */
    TIME_FROM_VOID_SENTENCES,
    /** Some sentences came before the first or after the last time; placed by the log's own pace. */
    TIME_EXTRAPOLATED,
    /** A given start lies elsewhere than the log's own date, which is used. */
    START_NOT_USED,
    /** Values computed by another program (talker CC) are kept apart, with the group's name behind an @. */
    COMPUTED_VALUES_APART,
    /** Several devices give the same quantity: one is taken, the others have the group's name behind an @. */
    SEVERAL_SOURCES,
    /** One talker sends the times of two devices in turn; they are kept apart by their clocks. */
    DEVICES_INTERLEAVED,
    /** The log states positions only; speed and course over ground are worked out from them. */
    SPEED_FROM_POSITIONS,
    /** Heel, pitch and rudder have the sign that the instrument gave them; makers differ. */
    INSTRUMENT_SIGNS,
    /** Recorded live: each source went through the reader of its kind. */
    JOURNAL,
    /** A source tells no time: it is placed by when its bytes arrived. */
    TIME_FROM_ARRIVAL
}
