package trimwright.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import trimwright.chance.RandomStream;
import trimwright.segment.Tack;

/**
 * One question on one point of sail: fixed effects of boats, intervals by drawing blocks of time again (all boats of a block
 * together, so that what a gust or a shift does to all of them stays together).
 */
final class Comparing {
    /** Draws: chosen; the standard error then is sure to 4 %. */
    private static final int DRAWS = 400;

    /** Fewer blocks of a boat say nothing about how sure a difference is: chosen. */
    private static final double LEAST_BLOCKS = 3;

    private static final double BOTH_SIDES = 0.975;

    private final Moments moments;
    private final Question question;
    private final int[] blockOf;
    private final int blocks;

    /** @param block length of a block (s) */
    Comparing(Moments moments, Question question, double block) {
        this.moments = moments;
        this.question = question;
        int steps = moments.clock().steps(block);
        blocks = moments.clock().size() / steps + 1;
        blockOf = moments.all().stream().mapToInt(moment -> moment.at() / steps).toArray();
    }

    /** Questions whose gauge has a zero error that turns its sign with the tack are answered tack by tack. */
    private boolean isByTack() {
        return switch (question) {
            case CAMBER, TWIST, INCIDENCE, HEEL -> true;
            default -> false;
        };
    }

    List<Difference> ask(List<String> names) {
        List<Tack[]> parts = isByTack()
                ? List.of(new Tack[] {Tack.STARBOARD}, new Tack[] {Tack.PORT})
                : List.<Tack[]>of(new Tack[] {Tack.STARBOARD, Tack.PORT});
        List<BlockSums[]> sums = parts.stream().map(this::sums).toList();
        double[] effects =
                mean(sums.stream().map(part -> Effects.of(total(part))).toList());
        double[][] drawn = draw(sums);
        List<Difference> found = new ArrayList<>();
        for (int b = 0; b < effects.length; b++) {
            double worth = worth(b);
            double deviation = deviation(drawn, b);
            if (Double.isNaN(effects[b]) || worth < LEAST_BLOCKS || !(deviation > 0)) {
                continue;
            }
            double error = deviation * Math.sqrt(worth / (worth - 1));
            TDistribution t = new TDistribution(worth - 1);
            double half = t.inverseCumulativeProbability(BOTH_SIDES) * error;
            double chance = 2 * t.cumulativeProbability(-Math.abs(effects[b]) / error);
            found.add(new Difference(
                    names.get(b),
                    moments.on(),
                    question,
                    effects[b],
                    effects[b] - half,
                    effects[b] + half,
                    error,
                    chance,
                    false,
                    Evidences.of(moments, b, worth)));
        }
        return found;
    }

    private double[][] draw(List<BlockSums[]> sums) {
        int[] used = Arrays.stream(blockOf).distinct().sorted().toArray();
        RandomStream random = RandomStream.of(1, question.name() + moments.on());
        double[][] drawn = new double[DRAWS][];
        for (int d = 0; d < DRAWS; d++) {
            int[] times = new int[blocks];
            for (int i = 0; i < used.length; i++) {
                times[used[(int) (random.uniform() * used.length)]]++;
            }
            drawn[d] = mean(sums.stream()
                    .map(part -> {
                        BlockSums sum = new BlockSums(moments.boats());
                        for (int i = 0; i < blocks; i++) {
                            for (int k = 0; k < times[i]; k++) {
                                sum.add(part[i]);
                            }
                        }
                        return Effects.of(sum);
                    })
                    .toList());
        }
        return drawn;
    }

    private BlockSums[] sums(Tack[] tacks) {
        BlockSums[] sums = new BlockSums[blocks];
        Arrays.setAll(sums, i -> new BlockSums(moments.boats()));
        List<Tack> wanted = List.of(tacks);
        for (int m = 0; m < moments.all().size(); m++) {
            Moments.Moment moment = moments.all().get(m);
            if (!wanted.contains(moment.tack())) {
                continue;
            }
            int n = 0;
            int[] who = new int[moment.boats().length];
            double[] values = new double[who.length];
            double[] winds = new double[who.length];
            for (int boat : moment.boats()) {
                double value = moments.value(question, moment, boat);
                double wind = moments.windChange(moment, boat);
                if (!Double.isNaN(value) && !Double.isNaN(wind)) {
                    who[n] = boat;
                    values[n] = value;
                    winds[n++] = wind;
                }
            }
            if (n >= 2) {
                sums[blockOf[m]].add(Arrays.copyOf(who, n), values, winds);
            }
        }
        return sums;
    }

    /** Blocks of equal length that a boat's seconds are worth. */
    private double worth(int boat) {
        double[] seconds = new double[blocks];
        for (int m = 0; m < blockOf.length; m++) {
            for (int there : moments.all().get(m).boats()) {
                seconds[blockOf[m]] += there == boat ? 1 : 0;
            }
        }
        double sum = Arrays.stream(seconds).sum();
        double square = Arrays.stream(seconds).map(s -> s * s).sum();
        return square == 0 ? 0 : sum * sum / square;
    }

    private static BlockSums total(BlockSums[] parts) {
        BlockSums sum = new BlockSums(parts[0].boats());
        for (BlockSums part : parts) {
            sum.add(part);
        }
        return sum;
    }

    private static double[] mean(List<double[]> parts) {
        double[] mean = new double[parts.get(0).length];
        for (double[] part : parts) {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += part[i] / parts.size();
            }
        }
        return mean;
    }

    private static double deviation(double[][] drawn, int b) {
        double[] known = Arrays.stream(drawn)
                .mapToDouble(draw -> draw[b])
                .filter(v -> !Double.isNaN(v))
                .toArray();
        if (known.length < DRAWS / 2) {
            return Double.NaN;
        }
        double mean = Arrays.stream(known).average().orElseThrow();
        return Math.sqrt(Arrays.stream(known).map(v -> (v - mean) * (v - mean)).sum() / (known.length - 1));
    }
}
