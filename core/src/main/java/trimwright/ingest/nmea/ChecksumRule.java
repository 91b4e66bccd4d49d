package trimwright.ingest.nmea;

/** What happens to a sentence that has no checksum. */
public enum ChecksumRule {
    /** It is left out and counted. */
    REQUIRED,
    /** It is taken as it stands. */
    OPTIONAL
}
