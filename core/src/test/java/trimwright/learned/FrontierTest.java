package trimwright.learned;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class FrontierTest {
    /** The two densities folded into each other by Simpson's rule, by nothing of the main code. */
    private static double folded(double off, double noise, double loss) {
        int steps = 20_000;
        double to = 10 * loss;
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            double lost = to * i / steps;
            double one = Math.exp(-0.5 * lost * lost / (loss * loss)) * Math.sqrt(2 / Math.PI) / loss;
            double other =
                    Math.exp(-0.5 * (off + lost) * (off + lost) / (noise * noise)) / (Math.sqrt(2 * Math.PI) * noise);
            sum += one * other * (i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2);
        }
        return sum * to / steps / 3;
    }

    @Test
    void theDensityIsThatOfNoiseLessAHalfNormalLoss() {
        for (double[] scales : new double[][] {{1, 2}, {0.5, 0.3}, {2, 1}}) {
            Frontier frontier = new Frontier(scales[0], scales[1]);
            for (double off = -4; off <= 3; off += 0.5) {
                assertEquals(Math.log(folded(off, scales[0], scales[1])), frontier.log(off), 1e-9, "at " + off);
            }
        }
    }

    @Test
    void slopeAndCurvatureAreThoseOfTheLogarithm() {
        Frontier frontier = new Frontier(0.9, 1.4);
        double step = 1e-4;
        for (double off = -6; off <= 6; off += 0.75) {
            double slope = (frontier.log(off + step) - frontier.log(off - step)) / (2 * step);
            double curvature = -(frontier.slope(off + step) - frontier.slope(off - step)) / (2 * step);
            assertEquals(slope, frontier.slope(off), 1e-7);
            assertEquals(curvature, frontier.curvature(off), 1e-7);
        }
    }

    /** Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1 (from memory) and 26.2.12. */
    @Test
    void theTailOfTheNormalIsTheTabledOne() {
        assertEquals(Math.log(0.5), Frontier.logNormal(0), 1e-15);
        assertEquals(Math.log(1.3498980316e-3), Frontier.logNormal(-3), 1e-10);
        // To either side of where the series begins.
        assertEquals(Frontier.logNormal(-19.999), Frontier.logNormal(-20.001) + Frontier.mills(-20) * 0.002, 1e-6);
    }
}
