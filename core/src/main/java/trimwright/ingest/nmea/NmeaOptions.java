package trimwright.ingest.nmea;

import org.jspecify.annotations.Nullable;

/**
 * How to read a log.
 *
 * @param boat name of the boat that it is of
 * @param startNanos time of its beginning (ns since 1970 UTC) for a log without date, or null
 * @param checksums whether a sentence must have one
 */
public record NmeaOptions(String boat, @Nullable Long startNanos, ChecksumRule checksums) {
    public static NmeaOptions of(String boat) {
        return new NmeaOptions(boat, null, ChecksumRule.REQUIRED);
    }

    public NmeaOptions withStart(long nanos) {
        return new NmeaOptions(boat, nanos, checksums);
    }
}
