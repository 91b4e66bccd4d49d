package trimwright.ingest;

import java.util.List;
import trimwright.track.BoatTrack;

/** What came out of a log. */
public sealed interface IngestResult {
    IngestReport report();

    /**
     * Something usable.
     *
     * @param tracks one for each boat, each with samples
     */
    record Tracks(List<BoatTrack> tracks, IngestReport report) implements IngestResult {
        public Tracks {
            tracks = List.copyOf(tracks);
        }
    }

    /** Not one value. */
    record Nothing(IngestReport report) implements IngestResult {}

    /** There are values but no date, and no start was given. */
    record NoDate(IngestReport report) implements IngestResult {}

    /**
     * A table lacks a column that its mapping names.
     *
     * @param wanted name of the column
     * @param present names that the header has
     */
    record NoColumn(String wanted, List<String> present, IngestReport report) implements IngestResult {
        public NoColumn {
            present = List.copyOf(present);
        }
    }
}
