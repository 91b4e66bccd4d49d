package trimwright.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.target.Band;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetLookup;
import trimwright.text.Texts;
import trimwright.units.Units;

/** The trim that was sailed in steady phases, a row a boat and point of sail, under the target of the wind that they had. */
final class TrimSection {
    private static final List<String> KINDS = List.of("upwind", "reaching", "downwind");
    private static final String[] MEANS = {
        "tws_kn",
        "course_twa_deg",
        "boat_speed_kn",
        "camber_deg",
        "twist_deg",
        "sheet_deg",
        "sheet_load_n",
        "heel_deg",
        "ride_height_m"
    };
    private static final String[] FORMATS = {"%.1f", "%.0f", "%.1f", "%.0f", "%.0f", "%.1f", "%.1f", "%.1f", "%.2f"};
    private static final int LOAD = 6;

    private TrimSection() {}

    /** @param book that the boats were held against, null where there was none */
    static void put(Html page, Day day, @Nullable TargetBook book) {
        page.put("h2", Texts.of("report.trim"));
        List<List<String>> rows = new ArrayList<>();
        for (String kind : KINDS) {
            Map<String, Mean> boats = new LinkedHashMap<>();
            Mean all = new Mean();
            for (JsonNode boat : day.boats()) {
                Mean own = new Mean();
                for (JsonNode phase : boat.path("phases")) {
                    if (phase.path("kind").asText().equals(kind)) {
                        own.add(phase);
                        all.add(phase);
                    }
                }
                if (own.seconds > 0) {
                    boats.put(Day.name(boat), own);
                }
            }
            boats.forEach((name, mean) -> rows.add(row(name, kind, mean)));
            Target target = book == null || boats.isEmpty() ? null : target(book, kind, all);
            if (target != null) {
                rows.add(row(kind, all, target));
                addAim(rows, day, kind);
            }
        }
        if (rows.isEmpty()) {
            page.put("p", Texts.of("report.trim_none"));
            return;
        }
        Tables.put(page, "report.trim_head", rows);
        page.put("p", Texts.of("report.trim_note"), "class", "note");
    }

    private static @Nullable Target target(TargetBook book, String kind, Mean mean) {
        double tws = Units.fromKnots(mean.of(0));
        TargetLookup found = switch (kind) {
            case "upwind" -> book.findUpwind(tws);
            case "downwind" -> book.findDownwind(tws);
            default -> book.find(tws, Units.fromDegrees(Math.abs(mean.of(1))));
        };
        return found.target();
    }

    private static List<String> row(String boat, String kind, Mean mean) {
        List<String> row =
                new ArrayList<>(List.of(boat, Texts.of("debrief.kind." + kind), Day.number("%.1f", mean.seconds / 60)));
        for (int i = 0; i < MEANS.length; i++) {
            double value = i == 1 ? Math.abs(mean.of(i)) : i == LOAD ? mean.of(i) / 1000 : mean.of(i);
            row.add(Day.number(FORMATS[i], value));
        }
        return row;
    }

    private static List<String> row(String kind, Mean mean, Target target) {
        return List.of(
                Texts.of("report.target_row"),
                Texts.of("debrief.kind." + kind),
                Day.NONE,
                Day.number("%.1f", mean.of(0)),
                Day.NONE,
                Day.number("%.1f", Units.toKnots(target.boatSpeed())),
                band(target.trim().camber(), target.bands().camber()),
                band(target.trim().twist(), target.bands().twist()),
                band(target.trim().sheet(), target.bands().sheet()),
                Day.number("%.1f", target.loads().sheetLoad() / 1000),
                Day.number("%.1f", Units.toDegrees(target.attitude().heel())),
                Day.number("%.2f", target.attitude().rideHeight()));
    }

    /** How the target was to be sailed in the gusts of the legs: mean over all boats' legs that have an aim, by their length. */
    private static void addAim(List<List<String>> rows, Day day, String kind) {
        Mean mean = new Mean();
        for (JsonNode boat : day.boats()) {
            for (JsonNode leg : boat.path("legs")) {
                if (leg.path("kind").asText().equals(kind) && leg.has("aim")) {
                    mean.add(leg.path("aim"), leg.path("duration_s").asDouble());
                }
            }
        }
        if (mean.seconds > 0) {
            List<String> row = row(Texts.of("report.aim_row"), kind, mean);
            row.set(2, Day.NONE);
            rows.add(row);
        }
    }

    private static String band(double value, Band band) {
        return Texts.of(
                "report.band", Units.toDegrees(value), Units.toDegrees(band.low()), Units.toDegrees(band.high()));
    }

    /** Means over phases, each weighed by its length. */
    private static final class Mean {
        private final double[] sums = new double[MEANS.length];
        private final double[] weights = new double[MEANS.length];
        private double seconds;

        void add(JsonNode phase) {
            add(phase, phase.path("duration_s").asDouble());
        }

        void add(JsonNode phase, double length) {
            seconds += length;
            for (int i = 0; i < MEANS.length; i++) {
                JsonNode value = phase.path(MEANS[i]);
                if (value.isNumber()) {
                    sums[i] += length * (i == 1 ? Math.abs(value.asDouble()) : value.asDouble());
                    weights[i] += length;
                }
            }
        }

        double of(int i) {
            return weights[i] == 0 ? Double.NaN : sums[i] / weights[i];
        }
    }
}
