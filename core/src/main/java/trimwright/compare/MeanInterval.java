package trimwright.compare;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Interval of the mean of autocorrelated samples: Student's t for as many samples as they are worth independent ones, that
 * number from their own autocorrelation. A short series hides its dependence, so the first autocorrelation is freed of its
 * bias of -(1 + 4 r)/n (Marriott and Pope 1954, from memory), and of what a first-order series of that value and the sum of
 * the autocorrelations found say, the longer dependence counts. How often it holds the truth is measured in the tests and
 * stated in docs/theory/analysis.md.
 */
public final class MeanInterval {
    private static final double BOTH_SIDES = 0.975;

    /** Fewer samples than this say nothing about their dependence; they count as so many (chosen). */
    private static final double LEAST_WORTH = 1.3;

    /** So many standard errors are added to the first autocorrelation (chosen): too short an interval misleads more. */
    private static final double CAREFUL = 0.5;

    private MeanInterval() {}

    /** Of at least two samples, none NaN, at 95 %. */
    public static Interval of(double[] samples) {
        int n = samples.length;
        if (n < 2) {
            throw new IllegalArgumentException("an interval needs two samples, got " + n);
        }
        double mean = Arrays.stream(samples).average().orElseThrow();
        double[] correlation = correlations(samples, mean);
        double dependence = Math.max(sum(correlation), firstOrder(correlation, n));
        double worth = Math.max(LEAST_WORTH, n / dependence);
        double square = 0;
        for (double sample : samples) {
            square += (sample - mean) * (sample - mean) / n;
        }
        // Dependent samples lie nearer to their own mean than to the true one.
        double variance = square / (1 - 1 / worth);
        double half = new TDistribution(Math.max(1, worth - 1)).inverseCumulativeProbability(BOTH_SIDES)
                * Math.sqrt(variance / worth);
        return new Interval(mean, mean - half, mean + half, n / dependence);
    }

    /** Autocorrelations at lags 1, 2, ... up to the first that is not positive, NaN-free; empty for constant samples. */
    private static double[] correlations(double[] samples, double mean) {
        int n = samples.length;
        double variance = 0;
        for (double sample : samples) {
            variance += (sample - mean) * (sample - mean);
        }
        double[] found = new double[n / 2 + 1];
        int count = 0;
        for (int lag = 1; variance > 0 && lag < Math.max(2, n / 2); lag++) {
            double together = 0;
            for (int i = lag; i < n; i++) {
                together += (samples[i] - mean) * (samples[i - lag] - mean);
            }
            found[count++] = together / variance;
            if (together <= 0) {
                break;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** Samples that are worth one: 1 + twice the sum of the positive ones. */
    private static double sum(double[] correlation) {
        return 1 + 2 * Arrays.stream(correlation).filter(value -> value > 0).sum();
    }

    /** The same of a first-order series, for which it is (1 + r) / (1 - r). */
    private static double firstOrder(double[] correlation, int n) {
        if (correlation.length == 0 || n < 6) {
            return 1;
        }
        double free = (n * correlation[0] + 1) / (n - 4);
        double careful = free + CAREFUL * Math.sqrt(Math.max(0, 1 - free * free) / n);
        double r = Math.max(0, Math.min(1 - 2.0 / n, careful));
        return (1 + r) / (1 - r);
    }
}
