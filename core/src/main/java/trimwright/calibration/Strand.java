package trimwright.calibration;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Residuals that depend on each other in time: one component of the wind over all boats, or one other series of one boat.
 * Knows its own noise, which it takes from the residuals.
 */
final class Strand {
    /** Beyond so many standard deviations a residual counts by its size and not by its square: Huber's 95 % (-). */
    private static final double HUBER = 1.345;

    /** Median of the absolute values over the standard deviation, of a normal distribution (-). */
    private static final double MEDIAN = 0.6745;

    /** What is fitted of each boat in one series, about: residuals are smaller than the noise by its share (-). */
    private static final int FITTED = 3;

    /** Least noise (m/s, rad): what rounding in a log leaves of a mean; chosen. */
    private static final double LEAST = 1e-4;

    /** Walks that are tried: variance in a second over that of the scatter (1/s). */
    private static final double SLOWEST_WALK = 1e-5;

    private static final double STEPS = 24;
    private static final double DECADES = 5;

    /** No series is taken for more dependent than this from block to block (-), chosen. */
    private static final double MOST_KEPT = 0.9;

    private final int[] boat;
    private final int[] place;
    private final double[] times;
    private final boolean isWind;
    private Whitening whitening;
    private double scale = 1;
    private final double[] weight;

    private Strand(int[] boat, int[] place, double[] times, boolean isWind) {
        this.boat = boat;
        this.place = place;
        this.times = times;
        this.isWind = isWind;
        whitening = isWind ? new Whitening.Walk(times, 1e-3) : new Whitening.FirstOrder(times, 0);
        weight = new double[times.length];
        Arrays.fill(weight, 1);
    }

    /** That series of those boats, in order of time; null where none has it. */
    static @Nullable Strand of(List<BoatModel> boats, List<Integer> which, BoatModel.Kind kind) {
        record At(int boat, int place, double time) {}
        List<At> all = which.stream()
                .flatMap(b -> {
                    int[] rows = boats.get(b).rowsOf(kind);
                    return IntStream.range(0, rows.length)
                            .mapToObj(k -> new At(
                                    b, k, boats.get(b).blocks.get(rows[k]).time()));
                })
                .sorted(Comparator.comparingDouble(At::time).thenComparingInt(At::boat))
                .toList();
        return all.isEmpty()
                ? null
                : new Strand(
                        all.stream().mapToInt(At::boat).toArray(),
                        all.stream().mapToInt(At::place).toArray(),
                        all.stream().mapToDouble(At::time).toArray(),
                        kind == BoatModel.Kind.WIND_NORTH || kind == BoatModel.Kind.WIND_EAST);
    }

    int size() {
        return times.length;
    }

    /** Readings of a boat, each by its weight (-). */
    double weightOf(int ofBoat) {
        return IntStream.range(0, weight.length)
                .filter(k -> boat[k] == ofBoat)
                .mapToDouble(k -> weight[k])
                .sum();
    }

    /** Rows for the least squares, of each boat's series: independent, of unit noise, outliers held down. */
    double[] rows(double[][] series) {
        double[] white = whitening.of(inOrder(series));
        for (int k = 0; k < white.length; k++) {
            white[k] *= Math.sqrt(weight[k]) / scale;
        }
        return white;
    }

    private double[] inOrder(double[][] series) {
        double[] all = new double[times.length];
        for (int k = 0; k < all.length; k++) {
            all[k] = series[boat[k]].length == 0 ? 0 : series[boat[k]][place[k]];
        }
        return all;
    }

    /** Takes noise, dependence and weights from residuals. */
    void learn(double[][] series) {
        double[] left = inOrder(series);
        whitening = isWind ? bestWalk(left) : new Whitening.FirstOrder(times, kept(left));
        double[] white = whitening.of(left);
        double[] size =
                Arrays.stream(white).map(Math::abs).filter(x -> x > 0).sorted().toArray();
        double free = Math.max(
                1, size.length - FITTED * Arrays.stream(boat).distinct().count());
        double median = size.length == 0 ? LEAST : size[size.length / 2] / MEDIAN;
        scale = Math.max(LEAST, median * Math.sqrt(size.length / free));
        double[] worth = worth(white);
        for (int k = 0; k < weight.length; k++) {
            double far = Math.abs(white[k]) / scale;
            weight[k] = worth[boat[k]] * (far <= HUBER ? 1 : HUBER / far);
        }
    }

    /** Independent blocks that one is worth for each boat (-): what is left of one boat in the wind of all may hang together. */
    private double[] worth(double[] white) {
        int boats = Arrays.stream(boat).max().orElse(0) + 1;
        double[] worth = new double[boats];
        for (int b = 0; b < boats; b++) {
            int own = b;
            double[] left = IntStream.range(0, white.length)
                    .filter(k -> boat[k] == own)
                    .mapToDouble(k -> Math.max(-3 * scale, Math.min(3 * scale, white[k])))
                    .toArray();
            double r = left.length < 6 ? 0 : correlation(left);
            worth[b] = (1 - r) / (1 + r);
        }
        return worth;
    }

    private double kept(double[] left) {
        double[] sorted = Arrays.stream(left).map(Math::abs).sorted().toArray();
        double most = sorted.length == 0 ? 0 : 3 * sorted[sorted.length / 2] / MEDIAN;
        double[] held =
                Arrays.stream(left).map(x -> Math.max(-most, Math.min(most, x))).toArray();
        return left.length < 6 ? 0 : correlation(held);
    }

    /** Of neighbours about zero, 0 to {@link #MOST_KEPT}. */
    private static double correlation(double[] left) {
        double together = 0;
        double square = 0;
        for (int k = 0; k < left.length; k++) {
            square += left[k] * left[k];
            together += k > 0 ? left[k] * left[k - 1] : 0;
        }
        return square == 0 ? 0 : Math.max(0, Math.min(MOST_KEPT, together / square));
    }

    /** The likeliest walk, with outliers held down. */
    private Whitening bestWalk(double[] left) {
        Whitening.Walk best = new Whitening.Walk(times, SLOWEST_WALK);
        double least = Double.POSITIVE_INFINITY;
        for (int step = 0; step <= STEPS; step++) {
            double walk = SLOWEST_WALK * StrictMath.pow(10, DECADES * step / STEPS);
            Whitening.Walk tried = new Whitening.Walk(times, walk);
            double[] white = tried.of(left);
            double square = 0;
            for (int k = 1; k < white.length; k++) {
                square += white[k] * white[k] * Math.min(1, weight[k]);
            }
            double unlikely =
                    (white.length - 1) * StrictMath.log(square / Math.max(1, white.length - 1) + LEAST * LEAST)
                            + tried.logVariances();
            if (unlikely < least) {
                least = unlikely;
                best = tried;
            }
        }
        return best;
    }
}
