package trimwright.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import trimwright.text.Texts;

/** Wind by leg, each boat's legs and turns in full, and what speaks against the data. */
final class BoatSections {
    /** A channel with less of its time covered is named; chosen, as in the text form. */
    private static final double WELL_COVERED = 0.98;

    private final Html page;
    private final Day day;

    BoatSections(Html page, Day day) {
        this.page = page;
        this.day = day;
    }

    /** Wind of each leg as the boats had it. */
    void wind() {
        page.put("h2", Texts.of("report.wind"));
        List<List<String>> rows = new ArrayList<>();
        for (JsonNode boat : day.boats()) {
            for (JsonNode leg : boat.path("legs")) {
                rows.add(List.of(
                        leg.path("leg").asText(),
                        way(leg),
                        Day.name(boat),
                        day.time(leg.path("start_s").asDouble()),
                        spread("%.1f", leg, "tws", "_kn"),
                        spread("%.0f", leg, "twd", "_deg")));
            }
        }
        rows.sort(Comparator.comparingInt(row -> Integer.parseInt(row.get(0))));
        if (rows.isEmpty()) {
            page.put("p", Texts.of("report.no_legs"));
            return;
        }
        page.in("details", () -> {
            page.put(
                    "summary",
                    Texts.of("report.wind_summary", least(rows, 4), most(rows, 4), least(rows, 5), most(rows, 5)));
            Tables.put(page, "report.wind_head", rows);
        });
    }

    private static String least(List<List<String>> rows, int column) {
        return first(rows.stream()
                .map(row -> row.get(column))
                .min(Comparator.comparingDouble(BoatSections::value))
                .orElse(Day.NONE));
    }

    private static String most(List<List<String>> rows, int column) {
        return first(rows.stream()
                .map(row -> row.get(column))
                .max(Comparator.comparingDouble(BoatSections::value))
                .orElse(Day.NONE));
    }

    private static String first(String spread) {
        return spread.split(" ")[0];
    }

    private static double value(String spread) {
        return spread.equals(Day.NONE) ? Double.NaN : Double.parseDouble(first(spread));
    }

    private static String spread(String format, JsonNode leg, String key, String unit) {
        JsonNode mean = leg.path(key + unit);
        return mean.isNumber()
                ? Day.number(format, mean) + " \u00b1 " + Day.number(format, leg.path(key + "_sd" + unit))
                : Day.NONE;
    }

    private static String way(JsonNode leg) {
        return leg.path("from").isTextual()
                ? Texts.of(
                        "debrief.way", leg.path("from").asText(), leg.path("to").asText())
                : Texts.of("debrief.kind." + leg.path("kind").asText());
    }

    /** Folded, one a boat. */
    void boats() {
        page.put("h2", Texts.of("report.boats"));
        for (JsonNode boat : day.boats()) {
            page.in("details", () -> {
                page.put("summary", Day.name(boat));
                legs(boat);
                turns(boat);
            });
        }
    }

    private void legs(JsonNode boat) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < boat.path("legs").size(); i++) {
            JsonNode leg = boat.path("legs").get(i);
            JsonNode ledger = boat.path("ledger").path(i);
            List<JsonNode> lines = new ArrayList<>();
            ledger.path("lines").forEach(lines::add);
            String where = lines.stream()
                    .filter(line -> Math.abs(line.path("loss_s").asDouble()) >= 0.5)
                    .sorted(Comparator.comparingDouble(
                            line -> -line.path("loss_s").asDouble()))
                    .map(line -> Texts.of("debrief.cause." + line.path("cause").asText()) + " "
                            + Day.number("%.1f", line.path("loss_s")))
                    .collect(Collectors.joining(", "));
            rows.add(List.of(
                    leg.path("leg").asText(),
                    way(leg),
                    day.time(leg.path("start_s").asDouble()),
                    Day.number("%.0f", leg.path("duration_s")),
                    Day.number("%.1f", leg.path("boat_speed_kn")),
                    Day.number("%.1f", ledger.path("total_s")),
                    where.isEmpty() ? Day.NONE : where));
        }
        if (!rows.isEmpty()) {
            Tables.put(page, "report.legs_head", rows);
        }
    }

    private void turns(JsonNode boat) {
        List<List<String>> rows = new ArrayList<>();
        for (JsonNode turn : boat.path("turns")) {
            JsonNode wet = turn.path("touched_down");
            rows.add(List.of(
                    turn.path("turn").asText(),
                    day.time(turn.path("start_s").asDouble()),
                    Texts.of("debrief.kind." + turn.path("kind").asText()),
                    turn.path("label").isTextual()
                            ? Texts.of("debrief.label." + turn.path("label").asText())
                            : Day.NONE,
                    wet.isBoolean() ? Texts.of(wet.asBoolean() ? "report.wet" : "report.dry") : Day.NONE,
                    Day.number("%.0f", Math.abs(turn.path("angle_deg").asDouble())),
                    Day.number("%.1f", turn.path("entry_speed_kn")),
                    Day.number("%.1f", turn.path("minimum_speed_kn")),
                    Day.number("%.0f", turn.path("lost_m"))));
        }
        if (!rows.isEmpty()) {
            Tables.put(page, "report.turn_head", rows);
        }
    }

    /** Channels with something against them, and why to doubt a boat's figures. */
    void data() {
        page.put("h2", Texts.of("report.data"));
        Map<List<String>, List<String>> same = new LinkedHashMap<>();
        for (JsonNode boat : day.boats()) {
            for (JsonNode channel : boat.path("quality").path("channels")) {
                String marks = marks(channel);
                boolean isThin = channel.path("coverage_ratio").asDouble() < WELL_COVERED;
                if (isThin || channel.path("gaps").asInt() > 0 || !marks.isEmpty()) {
                    List<String> against = List.of(
                            Day.name(boat),
                            Day.number(
                                    "%.0f", 100 * channel.path("coverage_ratio").asDouble()),
                            channel.path("gaps").asText(),
                            Day.number("%.0f", channel.path("longest_gap_s")),
                            marks.isEmpty() ? Day.NONE : marks);
                    same.computeIfAbsent(against, key -> new ArrayList<>())
                            .add(channel.path("channel").asText());
                }
            }
        }
        List<List<String>> rows = new ArrayList<>();
        same.forEach((against, channels) -> {
            List<String> row = new ArrayList<>(against);
            row.add(1, String.join(", ", channels));
            rows.add(row);
        });
        if (rows.isEmpty()) {
            page.put("p", Texts.of("report.data_well"));
        } else {
            Tables.put(page, "report.data_head", rows);
        }
        page.in(
                "ul",
                () -> day.boats()
                        .forEach(boat -> boat.path("caveats")
                                .forEach(caveat -> page.put(
                                        "li",
                                        Texts.of(
                                                "report.caveat",
                                                Day.name(boat),
                                                Texts.of("debrief.caveat." + caveat.asText()))))));
    }

    private static String marks(JsonNode channel) {
        List<String> marks = new ArrayList<>();
        for (String mark : List.of("frozen", "jump", "out_of_range", "time_repaired")) {
            if (channel.path(mark).asInt() > 0) {
                marks.add(channel.path(mark).asInt() + " " + Texts.of("debrief.mark." + mark));
            }
        }
        return String.join(", ", marks);
    }
}
