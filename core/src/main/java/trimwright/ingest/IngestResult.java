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
}
