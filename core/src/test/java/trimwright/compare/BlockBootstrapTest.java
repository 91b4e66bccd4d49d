package trimwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class BlockBootstrapTest {
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
        int repeats = 400;
        for (int k = 0; k < repeats; k++) {
            Interval interval = BlockBootstrap.of(series(random, n, memory));
            inside += interval.low() <= 0 && interval.high() >= 0 ? 1 : 0;
        }
        return (double) inside / repeats;
    }

    @Test
    void independentSamplesGiveTheIntervalOfTextbooks() {
        double[] samples = series(new Random(5), 2000, 0);
        Interval interval = BlockBootstrap.of(samples);
        double textbook = 2 * 1.96 / Math.sqrt(2000);
        // 15 %: spread of a standard deviation from 1000 draws and of the block length found.
        assertEquals(textbook, interval.high() - interval.low(), 0.15 * textbook);
    }

    /** Intervals of short dependent series are too short; docs/theory/analysis.md states these shares. */
    @Test
    void intervalsHoldTheTruthAboutAsOftenAsTheySay() {
        double ofLong = coverage(600, 0.8);
        double ofShort = coverage(60, 0.8);
        assertTrue(ofLong > 0.87 && ofLong < 0.99, "600 s: " + ofLong);
        assertTrue(ofShort > 0.80 && ofShort < 0.97, "60 s: " + ofShort);
    }

    @Test
    void dependenceIsThatOfTheSeries() {
        // (1 + m) / (1 - m) samples are worth one.
        Interval interval = BlockBootstrap.of(series(new Random(8), 20_000, 0.8));
        assertEquals(20_000 / 9.0, interval.independent(), 500);
    }

    @Test
    void sameSamplesGiveTheSameInterval() {
        double[] samples = series(new Random(1), 200, 0.5);
        assertEquals(BlockBootstrap.of(samples), BlockBootstrap.of(samples));
    }

    @Test
    void constantSamplesHaveNoWidth() {
        Interval interval = BlockBootstrap.of(new double[] {2, 2, 2, 2, 2, 2});
        assertEquals(2, interval.low(), 1e-12);
        assertEquals(2, interval.high(), 1e-12);
    }
}
