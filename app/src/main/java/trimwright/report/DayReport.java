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
    private static final String STYLE = """
            body { font: 15px/1.45 system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "DejaVu Sans", sans-serif;
              color: #16202b; background: #ffffff; max-width: 1000px; margin: 0 auto; padding: 16px 20px 40px; }
            h1 { font-size: 26px; line-height: 1.2; margin: 8px 0 2px; }
            h2 { font-size: 19px; margin: 30px 0 8px; border-top: 1px solid #d8dcdf; padding-top: 12px; }
            h3 { font-size: 15px; margin: 14px 0 4px; }
            .sub, .note { color: #566270; }
            .note { font-size: 13px; max-width: 90ch; }
            .caution { background: #fdf6e3; border-left: 4px solid #e69f00; padding: 8px 12px; margin: 14px 0; }
            .wide { overflow-x: auto; }
            table { border-collapse: collapse; font-size: 13px; font-variant-numeric: tabular-nums; margin: 6px 0; }
            th, td { text-align: left; padding: 3px 10px 3px 0; border-bottom: 1px solid #e6e9eb; vertical-align: top; }
            th { font-weight: 600; color: #566270; }
            td.n { text-align: right; white-space: nowrap; }
            th.n { text-align: right; }
            svg { width: 100%; height: auto; margin: 6px 0; }
            svg text { font-size: 12px; fill: #16202b; }
            svg .boat { fill: none; stroke-width: 1.3; }
            svg .line, svg .boundary { fill: none; stroke: #566270; stroke-width: 1.5; }
            svg .boundary { stroke-dasharray: 4 4; stroke: #8a949e; }
            svg .mark { fill: #ffffff; stroke: #16202b; stroke-width: 1.5; }
            svg .grid { stroke: #e6e9eb; }
            details { margin: 6px 0; }
            summary { cursor: pointer; font-weight: 600; }
            .keys span { margin-right: 18px; white-space: nowrap; }
            footer { margin-top: 30px; color: #566270; font-size: 13px; border-top: 1px solid #d8dcdf; padding-top: 8px; }
            @media print {
              body { max-width: none; padding: 0; font-size: 12px; }
              table { font-size: 10.5px; }
              .wide { overflow: visible; }
              h2, h3 { break-after: avoid; }
              svg, tr { break-inside: avoid; }
              details::details-content { content-visibility: visible; block-size: auto; }
            }
            """;

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
        LocalPlane plane = course == null ? planeOf(lines.values()) : course.plane();
        Map<String, double[][]> tracks = new LinkedHashMap<>();
        lines.forEach((boat, line) -> {
            double[][] columns = line.between(plane, Long.MIN_VALUE + 1, Long.MAX_VALUE - 1, MOST_PLACES);
            tracks.put(boat, new double[][] {columns[1], columns[2]});
        });
        return new DayReport(document, session.offset(), tracks, plane, course, book);
    }

    private static LocalPlane planeOf(Collection<TrackLine> lines) {
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
        page.in(
                "html",
                () -> {
                    page.in("head", () -> {
                        page.alone("meta", "charset", "utf-8");
                        page.alone("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
                        page.put("title", Texts.of("report.title", name, day.date()));
                        page.put("style", STYLE);
                    });
                    page.in("body", () -> body(page, day, name));
                },
                "lang",
                "en");
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
        keys(page, day);
        TracksDrawing.put(page, day, tracks, course, plane);
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
        return document.path("wing").isTextual()
                ? Texts.of("report.by_targets", document.path("wing").asText())
                : Texts.of("report.by_own_best");
    }

    private static void keys(Html page, Day day) {
        page.in(
                "p",
                () -> day.boats()
                        .forEach(boat -> page.in("span", () -> {
                            BoatInk ink = day.ink(boat);
                            page.in(
                                    "svg",
                                    () -> page.alone(
                                            "line",
                                            "x1",
                                            "0",
                                            "y1",
                                            "6",
                                            "x2",
                                            "44",
                                            "y2",
                                            "6",
                                            "stroke",
                                            ink.colour(),
                                            "stroke-width",
                                            "2.5",
                                            "stroke-dasharray",
                                            ink.dash()),
                                    "width",
                                    "44",
                                    "height",
                                    "12",
                                    "style",
                                    "width:44px;height:12px;margin:0 6px 0 0",
                                    "aria-hidden",
                                    "true");
                            page.say(Day.name(boat));
                        })),
                "class",
                "keys");
    }
}
