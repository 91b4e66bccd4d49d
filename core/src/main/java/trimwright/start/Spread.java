package trimwright.start;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.stat.descriptive.rank.Percentile;

/**
 * A figure over many runs.
 *
 * @param low a tenth of the runs lie below it
 * @param middle median
 * @param high nine tenths lie below it
 */
public record Spread(double low, double middle, double high) {
    /** A figure that a run does not have, NaN, counts as beyond all others; a quantile that falls among these is NaN. */
    static <T> Spread of(List<T> runs, ToDoubleFunction<T> figure) {
        double[] values = runs.stream()
                .mapToDouble(figure)
                .map(value -> Double.isNaN(value) ? Double.MAX_VALUE : value)
                .toArray();
        Percentile percentile = new Percentile();
        percentile.setData(values);
        return new Spread(at(percentile, 10), at(percentile, 50), at(percentile, 90));
    }

    Spread toward(Spread other, double share) {
        return new Spread(
                low + share * (other.low - low),
                middle + share * (other.middle - middle),
                high + share * (other.high - high));
    }

    private static double at(Percentile percentile, double p) {
        double value = percentile.evaluate(p);
        // Between a run that has it and one that has not stands nothing.
        return value > 1e12 ? Double.NaN : value;
    }
}
