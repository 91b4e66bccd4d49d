package trimwright.debrief;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Lines of legs against the seconds that are truly saved without their cause. */
final class TwinCount {
    private final String name;
    private final List<Double> saved = new ArrayList<>();
    private final List<Double> direct = new ArrayList<>();
    private final List<Double> line = new ArrayList<>();
    private final List<Double> less = new ArrayList<>();

    TwinCount(String name) {
        this.name = name;
    }

    /**
     * @param saved truly saved in a leg (s)
     * @param direct of it, as long as the boat flew and turned when it did with the cause
     * @param line of the leg (s)
     * @param less by how much the line is shorter without the cause (s)
     */
    void add(double saved, double direct, double line, double less) {
        this.saved.add(saved);
        this.direct.add(direct);
        this.line.add(line);
        this.less.add(less);
    }

    /** See docs/validation.md. */
    String row() {
        return String.format(
                Locale.ROOT,
                "| %s | %d | %s | %s | %s | %s | %.2f | %.2f | %.2f | %.2f |%n",
                name,
                saved.size(),
                mean(saved),
                mean(direct),
                mean(line),
                mean(less),
                slope(line, saved),
                near(line, saved),
                near(less, saved),
                near(less, direct));
    }

    private static double near(List<Double> of, List<Double> truth) {
        int near = 0;
        for (int i = 0; i < of.size(); i++) {
            double tolerance = Math.max(2, 0.15 * Math.abs(truth.get(i)));
            near += Math.abs(of.get(i) - truth.get(i)) <= tolerance ? 1 : 0;
        }
        return TruthCount.share(near, of.size());
    }

    private static double slope(List<Double> of, List<Double> truth) {
        double product = 0;
        double square = 0;
        for (int i = 0; i < of.size(); i++) {
            product += of.get(i) * truth.get(i);
            square += truth.get(i) * truth.get(i);
        }
        return product / square;
    }

    /** With its standard error, legs taken as independent. */
    private static String mean(List<Double> values) {
        double mean = values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
        double square = 0;
        for (double value : values) {
            square += (value - mean) * (value - mean);
        }
        double error = Math.sqrt(square / Math.max(1, values.size() - 1) / values.size());
        return String.format(Locale.ROOT, "%.2f +- %.2f", mean, error);
    }
}
