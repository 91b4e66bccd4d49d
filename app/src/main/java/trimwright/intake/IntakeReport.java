package trimwright.intake;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.IngestReport;
import trimwright.store.SessionInfo;

/**
 * What an import did.
 *
 * @param files in the order given
 * @param sessions that were made or grew, by start
 */
public record IntakeReport(List<FileReport> files, List<SessionInfo> sessions) {
    public IntakeReport {
        files = List.copyOf(files);
        sessions = List.copyOf(sessions);
    }

    /**
     * What became of one file.
     *
     * @param name as given
     * @param session id of the session that has it
     * @param outcome whether it was there before
     * @param kind {@code nmea0183} or {@code csv}; null if it was there before
     * @param boats that it is of
     * @param report of the reader; null if it was there before
     */
    public record FileReport(
            String name,
            String sha256,
            String session,
            Outcome outcome,
            @Nullable String kind,
            List<String> boats,
            @Nullable IngestReport report) {
        public FileReport {
            boats = List.copyOf(boats);
        }
    }

    /** Whether a file is new to the library. */
    public enum Outcome {
        IMPORTED,
        ALREADY_THERE
    }
}
