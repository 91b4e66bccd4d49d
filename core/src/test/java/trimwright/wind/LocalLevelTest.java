package trimwright.wind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LocalLevelTest {
    /** The smoothed level minimises squared residuals and steps weighted by their variances: solved here as one system. */
    @Test
    void smoothedLevelIsTheLeastSquaresAnswerWithMissingObservations() {
        double r = 2;
        double q = 0.5;
        double[] y = {1, 4, Double.NaN, Double.NaN, 2, 3, 7, Double.NaN};
        int n = y.length;
        double[][] m = new double[n][n + 1];
        for (int t = 0; t < n; t++) {
            if (!Double.isNaN(y[t])) {
                m[t][t] += 1 / r;
                m[t][n] += y[t] / r;
            }
            if (t > 0) {
                m[t][t] += 1 / q;
                m[t - 1][t - 1] += 1 / q;
                m[t][t - 1] -= 1 / q;
                m[t - 1][t] -= 1 / q;
            }
        }
        double[] expected = solve(m);
        double[] level = new LocalLevel(r, q).smooth(y).level();
        for (int t = 0; t < n; t++) {
            assertEquals(expected[t], level[t], 1e-12);
        }
    }

    @Test
    void beforeTheFirstObservationTheVarianceGrowsBackwards() {
        LocalLevel.Estimate smooth = new LocalLevel(1, 0.25).smooth(new double[] {Double.NaN, Double.NaN, 5, 5, 5});
        assertEquals(5, smooth.level()[0], 1e-12);
        assertEquals(0.5, smooth.variance()[0] - smooth.variance()[2], 1e-12);
    }

    @Test
    void noiseOfASimulatedWalkIsFoundAgain() {
        Random random = new Random(4);
        int n = 20_000;
        double[] north = new double[n];
        double[] east = new double[n];
        double levelN = 8;
        double levelE = 0;
        for (int i = 0; i < n; i++) {
            levelN += 0.1 * random.nextGaussian();
            levelE += 0.1 * random.nextGaussian();
            north[i] = levelN + 0.7 * random.nextGaussian();
            east[i] = levelE + 0.7 * random.nextGaussian();
        }
        WindNoise noise = WindNoise.of(north, east, 1.0);
        // A tenth: the spread of such a fit over 20,000 s, by repeating this with other seeds.
        assertEquals(0.49, noise.scatter(), 0.049);
        assertEquals(0.01, noise.walk(), 0.001);
        assertTrue(noise.smoothingTime() > 6 && noise.smoothingTime() < 8);
    }

    private static double[] solve(double[][] m) {
        int n = m.length;
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                double f = m[i][k] / m[k][k];
                for (int j = k; j <= n; j++) {
                    m[i][j] -= f * m[k][j];
                }
            }
        }
        double[] x = new double[n];
        for (int k = n - 1; k >= 0; k--) {
            double sum = m[k][n];
            for (int j = k + 1; j < n; j++) {
                sum -= m[k][j] * x[j];
            }
            x[k] = sum / m[k][k];
        }
        return x;
    }
}
