package trimwright.intake;

import java.nio.file.Path;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.nmea.ChecksumRule;

/**
 * What the user says about the files.
 *
 * @param boat name of the boat, or null: then the column of boats or the file's name
 * @param mapping for tables, or null
 * @param start UTC of the first sample, for logs without a date, or null
 * @param session id, prefix or {@code latest} of a session that the files are added to, or null for new ones
 * @param name word for the ids of new sessions, or null
 * @param course file of the race that the logs are of, or null
 * @param checksums whether sentences without one are taken
 */
public record IntakeOptions(
        @Nullable String boat,
        @Nullable MappingFile mapping,
        @Nullable Instant start,
        @Nullable String session,
        @Nullable String name,
        @Nullable Path course,
        ChecksumRule checksums) {

    @Nullable
    Long startNanos() {
        return start == null ? null : start.getEpochSecond() * 1_000_000_000L + start.getNano();
    }
}
