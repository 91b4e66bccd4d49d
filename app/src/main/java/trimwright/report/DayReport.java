package trimwright.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.course.Course;
import trimwright.course.LocalPlane;
import trimwright.course.Position;
import trimwright.debrief.TrackLine;
import trimwright.store.SessionInfo;
import trimwright.store.UtcOffset;
import trimwright.target.TargetBook;
import trimwright.text.Texts;
import trimwright.text.Version;
import trimwright.track.BoatTrack;

/**
 * A day as one HTML page that needs nothing else: conditions, tracks, starts, seconds lost, turns, findings, trim against target, data,
 * cautions. Text, tables and drawings; it prints.
 *
 * @param document {@code debrief/1}
 * @param offset of the times of day that are shown
 * @param tracks norths and easts (m) in the plane of each boat
 * @param plane in which the course is drawn too
 * @param course that was sailed, null where it is not known
 * @param book that the boats were held against, null where there was none
 */
public record DayReport(
        JsonNode document,
        UtcOffset offset,
        Map<String, double[][]> tracks,
        LocalPlane plane,
        @Nullable Course course,
        @Nullable TargetBook book) {
    /** Positions of a line that are drawn at most; chosen, more than a line a page wide can show. */
    private static final int MOST_PLACES = 1500;

    /**
     * Of a debrief that was made.
     *
     * @param session that was debriefed
     * @param recorded tracks of its boats
     */
    public static DayReport of(
            JsonNode document,
            SessionInfo session,
            List<BoatTrack> recorded,
            @Nullable Course course,
            @Nullable TargetBook book) {
        Map<String, TrackLine> lines = new LinkedHashMap<>();
        recorded.forEach(track -> lines.put(track.boat(), TrackLine.of(track)));
        LocalPlane plane = planeOf(course, lines.values());
        Map<String, double[][]> tracks = tracks(lines, plane, Long.MIN_VALUE + 1, Long.MAX_VALUE - 1, MOST_PLACES);
        return new DayReport(document, session.offset(), tracks, plane, course, book);
    }

    /** Norths and easts (m) of at most so many places of each boat in a stretch of time (ns since 1970). */
    static Map<String, double[][]> tracks(
            Map<String, TrackLine> lines, LocalPlane plane, long fromNanos, long toNanos, int most) {
        Map<String, double[][]> tracks = new LinkedHashMap<>();
        lines.forEach((boat, line) -> {
            double[][] columns = line.between(plane, fromNanos, toNanos, most);
            tracks.put(boat, new double[][] {columns[1], columns[2]});
        });
        return tracks;
    }

    /** The course's, else one about where the first boat began. */
    static LocalPlane planeOf(@Nullable Course course, Collection<TrackLine> lines) {
        if (course != null) {
            return course.plane();
        }
        for (TrackLine line : lines) {
            Position first = line.first();
            if (first != null) {
                return new LocalPlane(first);
            }
        }
        return new LocalPlane(new Position(0, 0));
    }

    /** The page. */
    public String html() {
        Html page = new Html();
        Day day = new Day(document, offset);
        String name = document.path("course")
                .path("name")
                .asText(document.path("session").asText());
        Sheet.put(page, Texts.of("report.title", name, day.date()), () -> body(page, day, name));
        return page.page();
    }

    private void body(Html page, Day day, String name) {
        page.put("h1", Texts.of("report.title", name, day.date()));
        page.put(
                "p",
                Texts.of(
                        "report.sub",
                        day.time(0),
                        day.time(document.path("duration_s").asDouble()),
                        offset.name(),
                        day.boats().size(),
                        judge()),
                "class",
                "sub");
        page.put("p", document.path("caution").asText(), "class", "caution");
        RaceSections race = new RaceSections(page, day);
        BoatSections boats = new BoatSections(page, day);
        race.inShort();
        boats.wind();
        page.put("h2", Texts.of("report.tracks"));
        List<String> names = day.boats().stream().map(Day::name).toList();
        Sheet.keys(page, names);
        TracksDrawing.put(page, names, tracks, course, plane);
        race.starts();
        race.losses();
        race.turns();
        race.findings();
        TrimSection.put(page, day, book);
        boats.boats();
        boats.data();
        page.put(
                "footer",
                Texts.of(
                        "report.footer",
                        Version.get(),
                        document.path("session").asText(),
                        document.path("model").path("boat_hash").asText(Day.NONE)));
    }

    private String judge() {
        if (document.path("boats").path(0).path("reference").asText().equals("learned")) {
            return Texts.of("report.by_learned", document.path("wing").asText());
        }
        return document.path("wing").isTextual()
                ? Texts.of("report.by_targets", document.path("wing").asText())
                : Texts.of("report.by_own_best");
    }
}
