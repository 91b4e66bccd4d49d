package trimwright.dockside;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** What was planted against what a check found; knows the truth file, never the check's thresholds. */
final class DockTruth {
    /** Zeros of this size must be found, those under the other must not be told of (deg). */
    private static final double PLAIN = 1.5;

    private static final double SMALL = 0.3;

    private static final Map<String, String> ZERO_LINES = Map.of(
            "roll", "heel_zero",
            "pitch", "pitch_zero",
            "camber", "flap_foot_zero",
            "flap_middle", "flap_middle_zero",
            "sheet", "sheet_zero");

    private static final Map<String, List<String>> PLAIN_LINES = Map.of(
            "roll", List.of("heel_side", "heel_zero"),
            "pitch", List.of("pitch_zero"),
            "heading", List.of("heading"),
            "wind", List.of("wind_turns", "wind_alignment", "wind_speed"),
            "camber", List.of("camber_starboard", "camber_port", "flap_foot_zero", "flap_head_zero"),
            "twist", List.of("twist_starboard", "twist_port", "flap_head_zero"),
            "flap_middle", List.of("flap_middle_zero"),
            "sheet", List.of("sheet_port", "sheet_starboard", "sheet_zero"),
            "sheet_load", List.of("load_pull", "load_slack"));

    private final JsonNode lines;
    private final List<String[]> rows = new ArrayList<>();
    private final Set<String> broken = new TreeSet<>();
    private final Set<String> explained = new TreeSet<>();
    final List<String> wrong = new ArrayList<>();
    int planted;

    DockTruth(JsonNode check, List<String> truth) {
        lines = check.path("lines");
        truth.stream().skip(1).forEach(row -> rows.add(row.split(",", -1)));
        for (String[] row : rows) {
            if (row[2].isEmpty() && !row[1].equals("other_mount")) {
                broken.add(row[0]);
                if (row[1].equals("swapped")) {
                    broken.add("twist");
                }
            }
        }
    }

    void judge() {
        for (String[] row : rows) {
            if (row[2].isEmpty()) {
                plain(row[0], row[1]);
            } else if (row[1].equals("zero_deg")) {
                zero(row[0], Double.parseDouble(row[2]));
            } else if (!broken.contains(row[0])) {
                ratio(row[0], row[1], Double.parseDouble(row[2]));
            }
        }
        for (JsonNode line : lines) {
            if (line.path("verdict").asText().equals("stop")
                    && !explained.contains(line.path("item").asText())) {
                wrong.add("blamed without cause: " + line);
            }
        }
    }

    private void plain(String gauge, String fault) {
        List<String> own = PLAIN_LINES.getOrDefault(gauge, List.of());
        explained.addAll(own);
        if (fault.equals("swapped")) {
            explained.addAll(PLAIN_LINES.getOrDefault("twist", List.of()));
        }
        boolean hidden = gauge.equals("wind")
                && (fault.equals("sign") || fault.equals("other_mount"))
                && (broken.contains("sheet") && !isSign("sheet"));
        // Which way a wind sensor counts cannot be told without the wing's angle; that must be said.
        String expected = hidden
                ? "cannot_tell"
                // A gauge that never spoke is not in the log, and a boat may be without this one.
                : gauge.equals("flap_middle") ? "not_logged" : fault.equals("other_mount") ? "does_not_turn" : fault;
        expect(own.get(0), expected, gauge + " " + fault);
    }

    private boolean isSign(String gauge) {
        return rows.stream().anyMatch(row -> row[0].equals(gauge) && row[1].equals("sign"));
    }

    private void zero(String gauge, double degrees) {
        String line = ZERO_LINES.get(gauge);
        if (line == null || broken.contains(gauge)) {
            head();
            return;
        }
        explained.add(line);
        if (Math.abs(degrees) >= PLAIN) {
            expect(line, "off", gauge + " zero " + degrees);
        } else if (Math.abs(degrees) <= SMALL) {
            refuse(line, gauge + " zero " + degrees);
        }
    }

    /** The head's flap is off by the foot's zero less the twist's. */
    private void head() {
        if (broken.contains("camber") || broken.contains("twist")) {
            return;
        }
        double degrees = value("camber", "zero_deg") - value("twist", "zero_deg");
        if (Math.abs(degrees) >= PLAIN) {
            explained.add("flap_head_zero");
            expect("flap_head_zero", "off", "head zero " + degrees);
        }
    }

    private void ratio(String gauge, String what, double ratio) {
        List<String> own = what.equals("factor_ratio")
                ? List.of("load_pull")
                : List.of(gauge + "_rate_starboard", gauge + "_rate_port");
        boolean found = what.equals("factor_ratio") ? ratio > 1.1 : ratio < 0.87;
        boolean sound = what.equals("factor_ratio") ? ratio < 1.03 : ratio > 0.93;
        for (String line : own) {
            if (found) {
                explained.add(line);
                expect(line, "off", gauge + " " + what + " " + ratio);
            } else if (sound) {
                refuse(line, gauge + " " + what + " " + ratio);
            }
        }
    }

    private double value(String gauge, String what) {
        return rows.stream()
                .filter(row -> row[0].equals(gauge) && row[1].equals(what))
                .mapToDouble(row -> Double.parseDouble(row[2]))
                .findFirst()
                .orElseThrow();
    }

    private void expect(String item, String finding, String why) {
        planted++;
        if (!finding(item).equals(finding)) {
            wrong.add(why + ": " + item + " says " + finding(item) + ", not " + finding);
        }
    }

    private void refuse(String item, String why) {
        if (finding(item).equals("off")) {
            wrong.add(why + ": " + item + " is told to be off");
        }
    }

    private String finding(String item) {
        for (JsonNode line : lines) {
            if (line.path("item").asText().equals(item)) {
                return line.path("finding").asText();
            }
        }
        throw new AssertionError("no line " + item);
    }
}
