package trimwright.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.course.Course;
import trimwright.debrief.BoatDebrief;
import trimwright.debrief.Debrief;
import trimwright.debrief.DebriefOptions;
import trimwright.debrief.DebriefReport;
import trimwright.debrief.TrackLine;
import trimwright.store.Moment;
import trimwright.store.SessionInfo;
import trimwright.text.Texts;
import trimwright.text.Version;
import trimwright.track.BoatTrack;
import trimwright.wind.SessionClock;
import trimwright.wind.WindOptions;

/**
 * A marked moment as one HTML page that needs nothing else: note, tracks, what each boat did second by second, means.
 *
 * @param moment that was marked
 * @param session in which
 * @param report of it, for the series
 * @param recorded tracks of its boats
 * @param course that was sailed, null where it is not known
 */
public record MomentPage(
        Moment moment,
        SessionInfo session,
        DebriefReport report,
        List<BoatTrack> recorded,
        @Nullable Course course) {
    private static final int MOST_PLACES = 1500;

    /**
     * Of a moment, its session cut up for it.
     *
     * @param boat whose wind sensor's place counts; null: as if it stood still and low
     */
    public static MomentPage of(
            Moment moment,
            SessionInfo session,
            List<BoatTrack> recorded,
            @Nullable Course course,
            @Nullable Boat boat) {
        DebriefOptions options = new DebriefOptions(boat, null, course, WindOptions.DEFAULT);
        return new MomentPage(moment, session, Debrief.of(recorded, options), recorded, course);
    }

    /** The page. */
    public String html() {
        Html page = new Html();
        Sheet.put(page, Texts.of("report.moment_title", moment.note()), () -> body(page));
        return page.page();
    }

    private void body(Html page) {
        SessionClock clock = report.clock();
        double late = (clock.timeNanos(0) - nanos(session.start())) / 1e9;
        int from = place(clock, moment.start() - late);
        int to = Math.max(from + 2, place(clock, moment.start() - late + moment.duration()));
        List<BoatDebrief> boats = report.boats();
        page.put("h1", moment.note());
        page.put(
                "p",
                Texts.of(
                        "report.moment_sub",
                        session.id(),
                        Day.time(session.start(), session.offset(), moment.start()),
                        session.offset().name(),
                        moment.duration(),
                        moment.boat() == null ? Texts.of("report.all_boats") : moment.boat(),
                        String.join(", ", moment.tags())),
                "class",
                "sub");
        page.put("p", Texts.of("debrief.caution"), "class", "caution");
        List<String> names = boats.stream().map(BoatDebrief::boat).toList();
        Sheet.keys(page, names);
        page.put("h2", Texts.of("report.tracks"));
        Map<String, TrackLine> lines = new LinkedHashMap<>();
        recorded.forEach(track -> lines.put(track.boat(), TrackLine.of(track)));
        TracksDrawing.put(
                page,
                names,
                DayReport.tracks(
                        lines,
                        DayReport.planeOf(course, lines.values()),
                        clock.timeNanos(from),
                        clock.timeNanos(to - 1),
                        MOST_PLACES),
                null,
                DayReport.planeOf(course, lines.values()));
        page.put("h2", Texts.of("report.by_second"));
        LanesDrawing drawing = new LanesDrawing(page, boats, from, to);
        drawing.put();
        page.put("h2", Texts.of("report.means"));
        means(page, drawing, boats);
        page.put("footer", Texts.of("report.moment_footer", Version.get(), session.id()));
    }

    private static long nanos(Instant time) {
        return time.getEpochSecond() * 1_000_000_000L + time.getNano();
    }

    private static int place(SessionClock clock, double seconds) {
        return (int) Math.max(0, Math.min(clock.size() - 1, Math.round(seconds / clock.step())));
    }

    private static void means(Html page, LanesDrawing drawing, List<BoatDebrief> boats) {
        List<List<String>> rows = new ArrayList<>();
        for (BoatDebrief boat : boats) {
            List<String> row = new ArrayList<>(List.of(boat.boat()));
            for (Lane lane : Lane.ALL) {
                double sum = 0;
                int known = 0;
                for (double value : drawing.line(lane, boat.wind())) {
                    if (!Double.isNaN(value)) {
                        sum += value;
                        known++;
                    }
                }
                row.add(known == 0 ? Day.NONE : Day.number(lane.format(), sum / known));
            }
            rows.add(row);
        }
        Tables.put(page, "report.means_head", rows);
    }
}
