package trimwright.browser;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Page;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What pages must show of a document's numbers, written here by other means than theirs; and what they do show. */
final class Shown {
    private Shown() {}

    /** The cells of each row, without the columns of words. */
    @SuppressWarnings("unchecked")
    static List<List<String>> rows(Page page, String rows) {
        return (List<List<String>>) page.evaluate(
                "rows => [...document.querySelectorAll(rows)].map(row => [...row.cells].filter(cell => cell.matches('td.n, td.quiet'))"
                        + ".map(cell => cell.innerText.replace(/\\s+/g, ' ').trim()))",
                rows);
    }

    /** Right-aligned cells of what was found, all in one line of text each. */
    static List<List<String>> figures(Page page) {
        return rows(page, ".findings tbody tr");
    }

    static List<List<String>> targets(JsonNode points, int tws) {
        List<JsonNode> here = new ArrayList<>();
        for (JsonNode point : points) {
            boolean best = !point.get("mode").asText().equals("angle");
            if (point.get("tws_kn").asDouble() == tws && (point.get("solved").asBoolean() || !best)) {
                here.add(point);
            }
        }
        here.sort(Comparator.comparingDouble(point -> point.get("twa_deg").asDouble()));
        return here.stream().map(Shown::target).toList();
    }

    private static List<String> target(JsonNode point) {
        if (!point.get("solved").asBoolean()) {
            return List.of(number(point, "twa_deg", 0), point.get("reason").asText());
        }
        String mark = switch (point.get("mode").asText()) {
            case "upwind" -> "\u25b2 ";
            case "downwind" -> "\u25bc ";
            default -> "";
        };
        return List.of(
                mark + number(point, "twa_deg", mark.isEmpty() ? 0 : 1),
                number(point, "boat_speed_kn", 1),
                number(point, "vmg_kn", 1),
                number(point, "awa_deg", 1),
                number(point, "aws_kn", 1),
                number(point, "camber_deg", 1),
                number(point, "twist_deg", 1),
                number(point, "sheet_deg", 1),
                number(point, "heel_deg", 1),
                number(point, "ride_height_m", 2),
                number(point, "leeway_deg", 1),
                text(point.get("sheet_load_n").asDouble() / 1000, 2),
                text(100 * point.get("righting_moment_ratio").asDouble(), 0));
    }

    static List<List<String>> phases(JsonNode boat) {
        List<List<String>> rows = new ArrayList<>();
        for (JsonNode phase : boat.get("phases")) {
            rows.add(List.of(
                    length(phase),
                    number(phase, "tws_kn", 1),
                    number(phase, "twa_deg", 0) + "\u00b0",
                    number(phase, "boat_speed_kn", 1),
                    difference(phase)));
        }
        return rows;
    }

    private static String difference(JsonNode phase) {
        if (phase.get("difference_kn").isNull()) {
            return "\u2013";
        }
        return (phase.get("difference_kn").asDouble() > 0 ? "+" : "") + number(phase, "difference_kn", 2)
                + (phase.get("caveats").isEmpty() ? " " : "? ") + number(phase, "difference_low_kn", 2) + " to "
                + number(phase, "difference_high_kn", 2);
    }

    static List<List<String>> turns(JsonNode boat) {
        List<List<String>> rows = new ArrayList<>();
        for (JsonNode turn : boat.get("turns")) {
            boolean open = turn.get("vmg_came_back").isBoolean()
                    && !turn.get("vmg_came_back").asBoolean();
            rows.add(List.of(
                    number(turn, "entry_speed_kn", 1),
                    number(turn, "minimum_speed_kn", 1),
                    number(turn, "exit_speed_kn", 1),
                    number(turn, "lost_m", 0) + (open ? "+" : "")));
        }
        return rows;
    }

    /**
     * Rows of causes that cost anything, those larger than their interval first, of these the costliest on all legs: each leg, all of
     * them, and the interval; in halves.
     */
    static List<List<String>> ledger(JsonNode boat) {
        Map<String, double[]> byCause = new LinkedHashMap<>();
        int legs = boat.get("ledger").size();
        for (int leg = 0; leg < legs; leg++) {
            for (JsonNode line : boat.get("ledger").get(leg).get("lines")) {
                double[] row = byCause.computeIfAbsent(line.get("cause").asText(), cause -> new double[legs + 1]);
                row[leg] += line.get("loss_s").asDouble();
                row[legs] += line.get("loss_s").asDouble();
            }
        }
        Map<String, JsonNode> causes = new LinkedHashMap<>();
        boat.get("causes").forEach(cause -> causes.put(cause.get("cause").asText(), cause));
        List<List<String>> rows = new ArrayList<>();
        for (boolean stands : new boolean[] {true, false}) {
            byCause.entrySet().stream()
                    .filter(row -> Arrays.stream(row.getValue()).anyMatch(loss -> Math.abs(loss) >= 0.05))
                    .filter(row -> Objects.requireNonNull(causes.get(row.getKey()))
                                    .get("stands")
                                    .asBoolean()
                            == stands)
                    .sorted(Comparator.comparingDouble(row -> -row.getValue()[legs]))
                    .forEach(row -> {
                        List<String> shown = new ArrayList<>();
                        for (double loss : row.getValue()) {
                            shown.add(half(loss));
                        }
                        shown.add(half(Objects.requireNonNull(causes.get(row.getKey()))
                                .get("error_s")
                                .asDouble()));
                        rows.add(shown);
                    });
        }
        return rows;
    }

    /** To the nearest half, a quarter upward. */
    private static String half(double seconds) {
        return text(Math.floor(2 * seconds + 0.5) / 2, 1);
    }

    private static String length(JsonNode piece) {
        long whole = Math.round(piece.get("duration_s").asDouble());
        return whole < 60 ? whole + " s" : whole / 60 + ":" + (whole % 60 < 10 ? "0" : "") + whole % 60;
    }

    private static String number(JsonNode record, String key, int decimals) {
        @Nullable JsonNode value = record.get(key);
        return value == null || value.isNull() ? "\u2013" : text(value.asDouble(), decimals);
    }

    /** Fixed decimals of the number as it stands in binary, halves away from zero, a true minus sign, no minus zero. */
    static String text(double value, int decimals) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() < 0 ? "\u2212" + rounded.negate().toPlainString() : rounded.toPlainString();
    }
}
