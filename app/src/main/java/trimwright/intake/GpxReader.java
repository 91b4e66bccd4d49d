package trimwright.intake;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Speed;
import io.jenetics.jpx.Track;
import io.jenetics.jpx.TrackSegment;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestReport;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.ingest.LogReader;
import trimwright.ingest.Sampled;
import trimwright.ingest.SourceChoice;
import trimwright.ingest.SourceTrack;
import trimwright.track.Paths;

/**
 * Tracks of GPX 1.0 and 1.1: positions with their times. The format has no speed in its newer version; where points
 * state none, speed and course over ground are those between the neighbours of each point, and the session says so.
 */
final class GpxReader implements LogReader {
    /** Chosen: neighbours further apart say nothing of the speed at the point between them. */
    private static final double LONGEST_GAP = 10;

    private final String boat;
    private final ByteArrayOutputStream document = new ByteArrayOutputStream();

    GpxReader(String boat) {
        this.boat = boat;
    }

    static boolean isLikely(byte[] head, int length) {
        String text = new String(head, 0, Math.min(length, 1 << 12), StandardCharsets.UTF_8);
        return text.contains("<gpx");
    }

    @Override
    public void accept(byte[] bytes, int from, int to) {
        document.write(bytes, from, to - from);
    }

    @Override
    public IngestResult finish() {
        Issues issues = new Issues();
        Set<IngestNote> notes = EnumSet.noneOf(IngestNote.class);
        byte[] bytes = document.toByteArray();
        long lines = 1;
        for (byte b : bytes) {
            lines += b == '\n' ? 1 : 0;
        }
        List<List<WayPoint>> segments;
        try {
            segments = segments(bytes);
        } catch (IOException | IllegalArgumentException | java.util.NoSuchElementException e) {
            issues.add(IssueKind.NOT_GPX, lines, String.valueOf(e.getMessage()));
            return new IngestResult.Nothing(new IngestReport(lines, 0, issues, notes));
        }
        Sampled positions = new Sampled(List.of(Paths.LATITUDE, Paths.LONGITUDE));
        Sampled motion = new Sampled(List.of(Paths.SOG, Paths.COG));
        long number = 0;
        for (List<WayPoint> segment : segments) {
            List<WayPoint> timed = new ArrayList<>();
            for (WayPoint point : segment) {
                number++;
                if (point.getTime().isEmpty()) {
                    issues.add(IssueKind.BAD_TIME, number, "");
                } else {
                    timed.add(point);
                    positions.begin(nanos(point), number, Sampled.TimeOrigin.LOG);
                    positions.put(0, point.getLatitude().toRadians());
                    positions.put(1, point.getLongitude().toRadians());
                }
            }
            addMotion(timed, motion, notes);
        }
        if (positions.size() == 0) {
            return new IngestResult.Nothing(new IngestReport(lines, 0, issues, notes));
        }
        notes.add(IngestNote.TIME_FROM_STAMPS);
        return SourceTrack.of(
                boat,
                List.of(
                        new SourceChoice.Source("gpx", 0, SourceChoice.Origin.DEVICE, positions),
                        new SourceChoice.Source("gpx-motion", 1, SourceChoice.Origin.DEVICE, motion)),
                notes,
                new IngestReport(lines, positions.size(), issues, notes));
    }

    private static List<List<WayPoint>> segments(byte[] bytes) throws IOException {
        String head = new String(bytes, 0, Math.min(bytes.length, 1 << 12), StandardCharsets.UTF_8);
        GPX.Version version = head.contains("GPX/1/0") ? GPX.Version.V10 : GPX.Version.V11;
        GPX gpx = GPX.Reader.of(version, GPX.Reader.Mode.LENIENT).read(new ByteArrayInputStream(bytes));
        return gpx.tracks()
                .flatMap(Track::segments)
                .map(TrackSegment::getPoints)
                .toList();
    }

    private static void addMotion(List<WayPoint> points, Sampled motion, Set<IngestNote> notes) {
        for (int i = 0; i < points.size(); i++) {
            WayPoint point = points.get(i);
            double speed = point.getSpeed().map(Speed::doubleValue).orElse(Double.NaN);
            double course = point.getCourse().map(c -> c.toRadians()).orElse(Double.NaN);
            if (Double.isNaN(speed)) {
                WayPoint before = points.get(Math.max(0, i - 1));
                WayPoint after = points.get(Math.min(points.size() - 1, i + 1));
                double seconds = (nanos(after) - nanos(before)) * 1e-9;
                if (seconds <= 0 || seconds > LONGEST_GAP) {
                    continue;
                }
                GeodesicData way = Geodesic.WGS84.Inverse(
                        before.getLatitude().doubleValue(),
                        before.getLongitude().doubleValue(),
                        after.getLatitude().doubleValue(),
                        after.getLongitude().doubleValue());
                speed = way.s12 / seconds;
                course = trimwright.units.Angles.compass(Math.toRadians(way.azi1));
                notes.add(IngestNote.SPEED_FROM_POSITIONS);
            }
            motion.begin(nanos(point), i + 1, Sampled.TimeOrigin.LOG);
            motion.put(0, speed);
            motion.put(1, course);
        }
    }

    private static long nanos(WayPoint point) {
        Instant time = point.getTime().orElseThrow();
        return time.getEpochSecond() * 1_000_000_000L + time.getNano();
    }
}
