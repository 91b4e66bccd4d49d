package trimwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class MeanIntervalTest {
    /** First-order autoregression about zero with unit variance. */
    private static double[] series(Random random, int n, double memory) {
        double[] samples = new double[n];
        double at = random.nextGaussian();
        for (int i = 0; i < n; i++) {
            samples[i] = at;
            at = memory * at + Math.sqrt(1 - memory * memory) * random.nextGaussian();
        }
        return samples;
    }

    private static double coverage(int n, double memory) {
        Random random = new Random(3);
        int inside = 0;
        int repeats = 1000;
        for (int k = 0; k < repeats; k++) {
            Interval interval = MeanInterval.of(series(random, n, memory));
            inside += interval.low() <= 0 && interval.high() >= 0 ? 1 : 0;
        }
        return (double) inside / repeats;
    }

    @Test
    void independentSamplesGiveTheIntervalOfTextbooks() {
        double[] samples = series(new Random(5), 2000, 0);
        Interval interval = MeanInterval.of(samples);
        double textbook = 2 * 1.96 / Math.sqrt(2000);
        // 5 %: spread of a standard deviation of 2000 and of the dependence found.
        assertEquals(textbook, interval.high() - interval.low(), 0.05 * textbook);
    }

    /** docs/theory/analysis.md states these shares; 1000 repeats know one to within 0.02. */
    @Test
    void intervalsHoldTheTruthAboutAsOftenAsTheySay() {
        for (int n : new int[] {20, 60, 600}) {
            for (double memory : new double[] {0, 0.5, 0.8}) {
                double share = coverage(n, memory);
                assertTrue(share >= 0.92 && share < 0.99, n + " s, memory " + memory + ": " + share);
            }
        }
    }

    @Test
    void dependenceIsThatOfTheSeries() {
        // (1 + m) / (1 - m) samples are worth one.
        Interval interval = MeanInterval.of(series(new Random(8), 20_000, 0.8));
        assertEquals(20_000 / 9.0, interval.independent(), 500);
    }

    @Test
    void sameSamplesGiveTheSameInterval() {
        double[] samples = series(new Random(1), 200, 0.5);
        assertEquals(MeanInterval.of(samples), MeanInterval.of(samples));
    }

    @Test
    void constantSamplesHaveNoWidth() {
        Interval interval = MeanInterval.of(new double[] {2, 2, 2, 2, 2, 2});
        assertEquals(2, interval.low(), 1e-12);
        assertEquals(2, interval.high(), 1e-12);
    }
}
