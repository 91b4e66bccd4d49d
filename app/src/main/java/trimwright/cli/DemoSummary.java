package trimwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Locale;
import trimwright.text.Texts;

/** What the demo prints at its end: a few rows of the target book, what the debrief found. */
final class DemoSummary {
    private static final List<Double> WINDS_KN = List.of(8.0, 12.0, 16.0, 20.0, 24.0);

    private DemoSummary() {}

    static String of(JsonNode document) {
        StringBuilder text = new StringBuilder();
        targets(document.get("targets"), text);
        debrief(document.get("debrief"), text);
        dock(document.get("dock_check"), text);
        line(text, "");
        line(text, document.get("debrief").get("caution").asText());
        return text.toString();
    }

    private static void targets(JsonNode book, StringBuilder text) {
        line(
                text,
                Texts.of(
                        "demo.targets",
                        book.get("boat").asText(),
                        book.get("wing").asText()));
        String columns = String.format(
                Locale.ROOT,
                "%7s %6s %10s %7s %6s",
                Texts.of("demo.speed"),
                Texts.of("demo.angle"),
                Texts.of("demo.made_good"),
                Texts.of("demo.camber"),
                Texts.of("demo.twist"));
        line(
                text,
                String.format(Locale.ROOT, "%6s    %-40s  %s", "", Texts.of("demo.upwind"), Texts.of("demo.downwind")));
        line(text, String.format(Locale.ROOT, "%6s %s   %s", Texts.of("demo.wind"), columns, columns));
        for (double wind : WINDS_KN) {
            String upwind = best(book, "upwind", wind);
            String downwind = best(book, "downwind", wind);
            line(text, String.format(Locale.ROOT, "%6.0f %s   %s", wind, upwind, downwind));
        }
    }

    private static String best(JsonNode book, String mode, double wind) {
        for (JsonNode point : book.get("points")) {
            if (point.get("mode").asText().equals(mode)
                    && point.get("tws_kn").asDouble() == wind
                    && point.get("solved").asBoolean()) {
                return String.format(
                        Locale.ROOT,
                        "%7.1f %6.0f %10.1f %7.0f %6.0f",
                        point.get("boat_speed_kn").asDouble(),
                        point.get("twa_deg").asDouble(),
                        Math.abs(point.get("vmg_kn").asDouble()),
                        point.get("camber_deg").asDouble(),
                        point.get("twist_deg").asDouble());
            }
        }
        return String.format(Locale.ROOT, "%7s %6s %10s %7s %6s", "-", "-", "-", "-", "-");
    }

    private static void debrief(JsonNode debrief, StringBuilder text) {
        line(text, "");
        line(text, Texts.of("demo.debrief", debrief.get("session").asText()));
        for (JsonNode boat : debrief.get("boats")) {
            line(
                    text,
                    Texts.of(
                            "demo.boat",
                            boat.get("boat").asText(),
                            debrief.get("duration_s").asDouble() / 60,
                            boat.get("legs").size(),
                            boat.get("turns").size(),
                            boat.get("phases").size(),
                            Texts.of("demo.reference." + boat.get("reference").asText())));
        }
    }

    private static void dock(JsonNode check, StringBuilder text) {
        line(text, "");
        line(
                text,
                Texts.of(
                        "demo.dock",
                        check.get("boat").asText(),
                        check.get("start_utc").asText().substring(11, 16),
                        check.get("stop").asInt(),
                        check.get("note").asInt(),
                        check.get("pass").asInt()));
        for (JsonNode one : check.get("lines")) {
            if (one.get("verdict").asText().equals("stop")) {
                line(
                        text,
                        Texts.of(
                                "demo.dock_stop",
                                one.get("what").asText(),
                                one.get("says").asText()));
            }
        }
    }

    private static void line(StringBuilder text, String line) {
        text.append(line).append('\n');
    }
}
