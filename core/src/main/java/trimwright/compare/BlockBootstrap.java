package trimwright.compare;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import trimwright.chance.RandomStream;

/**
 * Interval of the mean of autocorrelated samples: whole blocks of neighbours are drawn again and again (circular block
 * bootstrap, Politis and Romano 1992, from memory). A block is twice the time over which the samples depend on each
 * other, found from their own autocorrelation, and the interval is widened by Student's t for the number of blocks, as
 * few blocks know their own spread badly. Drawn from a fixed seed: same samples, same interval. How often it holds the
 * truth is measured in the tests and stated in docs/theory/analysis.md: somewhat less often than 95 % for short phases.
 */
public final class BlockBootstrap {
    private static final int DRAWS = 1000;
    private static final double OUTSIDE_EACH_WAY = 0.025;
    private static final long SEED = 1;

    private BlockBootstrap() {}

    /** Of at least two samples, none NaN. */
    public static Interval of(double[] samples) {
        int n = samples.length;
        if (n < 2) {
            throw new IllegalArgumentException("an interval needs two samples, got " + n);
        }
        double mean = Arrays.stream(samples).average().orElseThrow();
        double dependence = dependence(samples, mean);
        int block = Math.max(1, Math.min(n / 3, (int) Math.ceil(2 * dependence)));
        double[] sums = new double[n];
        double window = 0;
        for (int k = 0; k < block; k++) {
            window += samples[k];
        }
        for (int i = 0; i < n; i++) {
            sums[i] = window;
            window += samples[(i + block) % n] - samples[i];
        }
        RandomStream chance = RandomStream.of(SEED, "block bootstrap");
        int blocks = Math.max(1, Math.round((float) n / block));
        double[] means = new double[DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            double sum = 0;
            for (int b = 0; b < blocks; b++) {
                sum += sums[(int) (chance.uniform() * n)];
            }
            means[draw] = sum / ((double) blocks * block);
        }
        Arrays.sort(means);
        int outside = (int) (OUTSIDE_EACH_WAY * DRAWS);
        double widened = widening((double) n / block - 1);
        return new Interval(
                mean,
                mean - widened * (mean - means[outside]),
                mean + widened * (means[DRAWS - 1 - outside] - mean),
                n / dependence);
    }

    /** Student's t of so many degrees of freedom over the normal quantile (-). */
    private static double widening(double freedom) {
        double normal = new NormalDistribution().inverseCumulativeProbability(1 - OUTSIDE_EACH_WAY);
        return new TDistribution(Math.max(1, freedom)).inverseCumulativeProbability(1 - OUTSIDE_EACH_WAY) / normal;
    }

    /**
     * Number of samples that are worth one independent one: 1 + twice the sum of autocorrelations up to the first that
     * is not positive.
     */
    private static double dependence(double[] samples, double mean) {
        int n = samples.length;
        double variance = 0;
        for (double sample : samples) {
            variance += (sample - mean) * (sample - mean);
        }
        double sum = 1;
        for (int lag = 1; variance > 0 && lag < n / 2; lag++) {
            double together = 0;
            for (int i = lag; i < n; i++) {
                together += (samples[i] - mean) * (samples[i - lag] - mean);
            }
            if (together <= 0) {
                break;
            }
            sum += 2 * together / variance;
        }
        return sum;
    }
}
