package trimwright.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import trimwright.debrief.CauseLoss;
import trimwright.debrief.FoilTime;
import trimwright.text.Texts;

/** What happened to the boats: the race in short, starts, seconds lost, turns, what boats did otherwise. */
final class RaceSections {
    private final Html page;
    private final Day day;

    RaceSections(Html page, Day day) {
        this.page = page;
        this.day = day;
    }

    /** A line a boat, those first that lost least. */
    void inShort() {
        page.put("h2", Texts.of("report.short"));
        List<List<String>> rows = new ArrayList<>();
        for (JsonNode boat : day.byLoss()) {
            List<CauseLoss> told = told(boat);
            String where = told.stream().limit(3).map(RaceSections::told).collect(Collectors.joining("; "));
            rows.add(List.of(
                    Day.name(boat),
                    Day.number("%.1f", FoilTime.of(boat).sailed() / 60),
                    Day.number("%.0f", Day.lost(boat)),
                    foils(boat),
                    where.isEmpty() ? Texts.of("report.cannot_tell") : where));
        }
        Tables.put(page, "report.short_head", rows);
    }

    /** Share of the legs on the foils. */
    private static String foils(JsonNode boat) {
        if (boat.path("foiling_told_by").isNull()) {
            return Day.NONE;
        }
        return Day.number("%.0f", 100 * FoilTime.of(boat).share());
    }

    private static String told(CauseLoss loss) {
        return Texts.of(
                "report.told", Texts.of("debrief.cause." + loss.cause()), half(loss.loss()), half(loss.error()));
    }

    /** In half seconds: more is not known. */
    private static double half(double seconds) {
        return Math.rint(2 * seconds) / 2;
    }

    private static List<CauseLoss> told(JsonNode boat) {
        return CauseLoss.of(boat).stream()
                .filter(CauseLoss::isTold)
                .sorted(Comparator.comparingDouble(loss -> -loss.loss()))
                .toList();
    }

    /** Nothing where no boat crossed a line. */
    void starts() {
        List<List<String>> rows = new ArrayList<>();
        for (JsonNode boat : day.boats()) {
            JsonNode start = boat.path("start");
            if (start.isObject()) {
                boolean early = start.path("early").asBoolean();
                rows.add(List.of(
                        Day.name(boat),
                        Texts.of(early ? "report.start_early" : "report.start_late"),
                        Day.number("%.1f", start.path("crossed_s")),
                        Day.number("%.0f", Math.abs(start.path("distance_m").asDouble())),
                        Day.number("%.1f", start.path("speed_kn")),
                        percent(start.path("target_ratio")),
                        percent(start.path("line_ratio"))));
            }
        }
        if (!rows.isEmpty()) {
            rows.sort(Comparator.comparingDouble(row -> Double.parseDouble(row.get(2))));
            page.put("h2", Texts.of("report.starts"));
            Tables.put(page, "report.starts_head", rows);
            page.put("p", Texts.of("report.starts_note"), "class", "note");
        }
    }

    private static String percent(JsonNode ratio) {
        return ratio.isNumber() ? Day.number("%.0f", 100 * ratio.asDouble()) : Day.NONE;
    }

    /** Bars, lines along the course, and what stands out of its interval. */
    void losses() {
        page.put("h2", Texts.of("report.losses"));
        boolean judged =
                day.boats().stream().anyMatch(boat -> boat.path("ledger").size() > 0);
        if (!judged) {
            page.put("p", Texts.of("report.not_judged"));
            return;
        }
        page.put("h3", Texts.of("report.causes"));
        CausesDrawing.put(page, day);
        page.put("h3", Texts.of("report.lost_along"));
        LossDrawing.put(page, day);
        List<List<String>> rows = new ArrayList<>();
        for (JsonNode boat : day.byLoss()) {
            List<CauseLoss> all = CauseLoss.of(boat);
            String small = all.stream()
                    .filter(loss -> !loss.isTold() && CausesDrawing.CAUSES.contains(loss.cause()))
                    .map(loss -> Texts.of("debrief.cause." + loss.cause()))
                    .collect(Collectors.joining(", "));
            String told = told(boat).stream().map(RaceSections::told).collect(Collectors.joining("; "));
            String none = Texts.of("report.cannot_tell");
            rows.add(List.of(Day.name(boat), told.isEmpty() ? none : told, small.isEmpty() ? Day.NONE : small));
        }
        Tables.put(page, "report.told_head", rows);
        page.put("p", Texts.of("report.losses_note"), "class", "note");
    }

    /** For each boat and kind of turn: how many, how many stayed on the foils, what half of them lost at most, the dearest. */
    void turns() {
        List<List<String>> rows = new ArrayList<>();
        for (JsonNode boat : day.boats()) {
            Map<String, List<JsonNode>> kinds = new TreeMap<>();
            boat.path("turns")
                    .forEach(turn -> kinds.computeIfAbsent(turn.path("kind").asText(), kind -> new ArrayList<>())
                            .add(turn));
            kinds.forEach((kind, turns) -> rows.add(row(Day.name(boat), kind, turns)));
        }
        page.put("h2", Texts.of("report.turns"));
        if (rows.isEmpty()) {
            page.put("p", Texts.of("report.turns_none"));
            return;
        }
        Tables.put(page, "report.turns_head", rows);
        page.put("p", Texts.of("report.turns_note"), "class", "note");
    }

    private List<String> row(String boat, String kind, List<JsonNode> turns) {
        long dry = turns.stream()
                .filter(turn -> turn.path("touched_down").isBoolean()
                        && !turn.path("touched_down").asBoolean())
                .count();
        boolean isTold =
                turns.stream().anyMatch(turn -> turn.path("touched_down").isBoolean());
        List<JsonNode> priced = turns.stream()
                .filter(turn -> turn.path("lost_m").isNumber())
                .sorted(Comparator.comparingDouble(turn -> turn.path("lost_m").asDouble()))
                .toList();
        JsonNode worst = priced.isEmpty() ? null : priced.get(priced.size() - 1);
        return List.of(
                boat,
                Texts.of("debrief.kind." + kind),
                Integer.toString(turns.size()),
                isTold ? Long.toString(dry) : Day.NONE,
                priced.isEmpty() ? Day.NONE : Day.number("%.0f", median(priced)),
                worst == null ? Day.NONE : Day.number("%.0f", worst.path("lost_m")),
                worst == null ? Day.NONE : day.time(worst.path("start_s").asDouble()));
    }

    private static double median(List<JsonNode> sorted) {
        int middle = sorted.size() / 2;
        double upper = sorted.get(middle).path("lost_m").asDouble();
        return sorted.size() % 2 == 1
                ? upper
                : 0.5 * (upper + sorted.get(middle - 1).path("lost_m").asDouble());
    }

    /** Sentences, each with the time of what it rests on most. */
    void findings() {
        JsonNode fleet = day.document().path("fleet");
        if (day.boats().size() < 2 || !fleet.isObject()) {
            return;
        }
        page.put("h2", Texts.of("report.found"));
        if (fleet.path("findings").isEmpty()) {
            page.put("p", fleet.path("nothing").asText());
            return;
        }
        page.in(
                "ul",
                () -> fleet.path("findings")
                        .forEach(finding -> page.in("li", () -> {
                            page.say(finding.path("sentence").asText() + " ");
                            JsonNode start = finding.path("start_s");
                            if (start.isNumber()) {
                                page.put(
                                        "span",
                                        Texts.of("report.found_at", day.time(start.asDouble())),
                                        "class",
                                        "note");
                            }
                        })));
        page.put("p", Texts.of("debrief.found.note"), "class", "note");
    }
}
