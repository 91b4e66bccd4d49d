package trimwright.debrief;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trimwright.compare.Cause;

/**
 * Lines of legs against the seconds that twin legs without the cause were faster by, at the pace of the targets. A line
 * that means what it says is that long; so is what it is shorter by on the twin.
 */
final class TwinCount {
    private final String name;
    private final List<Map<Cause, Double>> lines = new ArrayList<>();
    private final List<Map<Cause, Double>> twins = new ArrayList<>();
    private final List<Double> saved = new ArrayList<>();

    TwinCount(String name) {
        this.name = name;
    }

    void add(TwinLegs.Judged leg, TwinLegs.Judged twin) {
        lines.add(leg.lines());
        twins.add(twin.lines());
        saved.add(leg.trueLoss() - twin.trueLoss());
    }

    /** Legs, mean seconds saved with its standard error, then of the sum of those lines: see the study. */
    String row(Cause... causes) {
        double[] line = new double[saved.size()];
        double[] less = new double[saved.size()];
        int nearLine = 0;
        int nearLess = 0;
        double product = 0;
        double square = 0;
        for (int i = 0; i < line.length; i++) {
            for (Cause cause : causes) {
                line[i] += lines.get(i).getOrDefault(cause, 0.0);
                less[i] += lines.get(i).getOrDefault(cause, 0.0) - twins.get(i).getOrDefault(cause, 0.0);
            }
            double truly = saved.get(i);
            double tolerance = Math.max(2, 0.15 * Math.abs(truly));
            nearLine += Math.abs(line[i] - truly) <= tolerance ? 1 : 0;
            nearLess += Math.abs(less[i] - truly) <= tolerance ? 1 : 0;
            product += less[i] * truly;
            square += truly * truly;
        }
        double[] truly = saved.stream().mapToDouble(Double::doubleValue).toArray();
        return String.format(
                Locale.ROOT,
                "| %s | %d | %.1f +- %.1f | %.1f +- %.1f | %.1f +- %.1f | %.2f | %.2f | %.2f |%n",
                name,
                line.length,
                mean(truly),
                error(truly),
                mean(line),
                error(line),
                mean(less),
                error(less),
                product / square,
                TruthCount.share(nearLine, line.length),
                TruthCount.share(nearLess, line.length));
    }

    /** By how much every line is shorter on the twin, on average. */
    String moved() {
        Map<Cause, Double> sums = new EnumMap<>(Cause.class);
        for (int i = 0; i < lines.size(); i++) {
            for (Cause cause : Cause.values()) {
                sums.merge(
                        cause,
                        lines.get(i).getOrDefault(cause, 0.0) - twins.get(i).getOrDefault(cause, 0.0),
                        Double::sum);
            }
        }
        StringBuilder text = new StringBuilder("  moved of " + name + ":");
        sums.forEach((cause, sum) -> text.append(
                String.format(Locale.ROOT, " %s %.2f", cause.name().toLowerCase(Locale.ROOT), sum / lines.size())));
        return text.append('\n').toString();
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** Standard error of the mean, legs taken as independent. */
    private static double error(double[] values) {
        double mean = mean(values);
        double square = 0;
        for (double value : values) {
            square += (value - mean) * (value - mean);
        }
        return Math.sqrt(square / Math.max(1, values.length - 1) / values.length);
    }
}
