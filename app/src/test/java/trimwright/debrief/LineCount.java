package trimwright.debrief;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import trimwright.compare.Cause;
import trimwright.compare.LegLedger;

/** One line of the ledger against runs of the same days without that cause, leg by leg. */
final class LineCount {
    private final Cause cause;
    private final List<Double> lines = new ArrayList<>();
    private final List<Double> lessWithout = new ArrayList<>();
    private final List<Double> times = new ArrayList<>();

    LineCount(Cause cause) {
        this.cause = cause;
    }

    /** Adds legs that were ended on both days. */
    void add(SimulatedDay day, DebriefReport with, SimulatedDay dayWithout, DebriefReport without) throws IOException {
        for (BoatDebrief boat : with.boats()) {
            BoatDebrief other = without.boats().stream()
                    .filter(candidate -> candidate.boat().equals(boat.boat()))
                    .findFirst()
                    .orElseThrow();
            List<Double> legs = day.legs(boat.boat());
            List<Double> otherLegs = dayWithout.legs(boat.boat());
            int count = Math.min(
                    Math.min(legs.size(), otherLegs.size()),
                    Math.min(
                            boat.comparison().ledgers().size(),
                            other.comparison().ledgers().size()));
            for (int leg = 0; leg < count; leg++) {
                double line = boat.comparison().ledgers().get(leg).lossOf(cause);
                lines.add(line);
                lessWithout.add(line - other.comparison().ledgers().get(leg).lossOf(cause));
                times.add(legs.get(leg) - otherLegs.get(leg));
            }
        }
    }

    /** Mean line, mean of line less that of the day without, mean seconds saved, how far they differ, share within 15 % or 2 s. */
    String row(String name) {
        int near = 0;
        double square = 0;
        for (int i = 0; i < times.size(); i++) {
            double off = lines.get(i) - times.get(i);
            square += off * off;
            near += Math.abs(off) <= Math.max(2, 0.15 * Math.abs(times.get(i))) ? 1 : 0;
        }
        return String.format(
                Locale.ROOT,
                "| %s | %d | %.1f | %.1f | %.1f | %.1f | %.2f |%n",
                name,
                times.size(),
                mean(lines),
                mean(lessWithout),
                mean(times),
                Math.sqrt(square / Math.max(1, times.size())),
                TruthCount.share(near, times.size()));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
    }

    /**
     * Seconds a leg of each cause by point of sail, then of what remains by boat; last, what remains over all lines, each leg's
     * without sign and seconds not judged left out.
     */
    static String lines(List<DebriefReport> reports) {
        Map<String, double[]> byKind = new TreeMap<>();
        Map<String, double[]> byBoat = new TreeMap<>();
        for (DebriefReport report : reports) {
            for (BoatDebrief boat : report.boats()) {
                for (LegLedger ledger : boat.comparison().ledgers()) {
                    add(byKind, ledger.leg().kind().name(), ledger);
                    add(byKind, "all", ledger);
                    add(byBoat, boat.boat(), ledger);
                }
            }
        }
        StringBuilder text = new StringBuilder();
        byKind.forEach((kind, sums) -> text.append(row(kind, sums)));
        byBoat.forEach((boat, sums) -> text.append(row(boat, sums)));
        return text.toString();
    }

    private static final int CAUSES = Cause.values().length;

    private static void add(Map<String, double[]> rows, String row, LegLedger ledger) {
        double[] sums = rows.computeIfAbsent(row, name -> new double[CAUSES + 4]);
        sums[CAUSES]++;
        sums[CAUSES + 1] += ledger.total();
        for (LegLedger.Line line : ledger.lines()) {
            sums[line.cause().ordinal()] += line.loss();
            double size = line.cause() == Cause.UNJUDGED ? 0 : Math.abs(line.loss());
            sums[CAUSES + 2] += size;
            sums[CAUSES + 3] += line.cause() == Cause.REMAINING ? size : 0;
        }
    }

    private static String row(String name, double[] sums) {
        StringBuilder text = new StringBuilder("| ").append(name.toLowerCase(Locale.ROOT));
        text.append(String.format(Locale.ROOT, " | %.0f | %.1f", sums[CAUSES], sums[CAUSES + 1] / sums[CAUSES]));
        for (int cause = 0; cause < CAUSES; cause++) {
            text.append(String.format(Locale.ROOT, " | %.1f", sums[cause] / sums[CAUSES]));
        }
        return text.append(String.format(Locale.ROOT, " | %.2f |%n", sums[CAUSES + 3] / sums[CAUSES + 2]))
                .toString();
    }
}
