package trimwright.intake;

import java.util.List;
import trimwright.ingest.IngestReport;
import trimwright.track.BoatTrack;

/**
 * A file that was read.
 *
 * @param kind {@code nmea0183} or {@code csv}
 */
record ReadFile(SourceBytes source, String sha256, String kind, List<BoatTrack> tracks, IngestReport report) {
    ReadFile {
        tracks = List.copyOf(tracks);
    }

    long startNanos() {
        return tracks.stream().mapToLong(BoatTrack::startNanos).min().orElseThrow();
    }

    long endNanos() {
        return tracks.stream().mapToLong(BoatTrack::endNanos).max().orElseThrow();
    }
}
