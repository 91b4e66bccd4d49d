package trimwright.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LayerPropertyTest {
    private static final double REYNOLDS = 1e6;

    /** Four unknowns at each end, and the shift of the stagnation point. */
    private static final int LATER = 4;

    private static final int SHIFT = 8;
    private static final int ALL = 9;

    @Test
    void derivativesOfAllIntervalsAreThoseOfDifferences() {
        Random random = new Random(7);
        for (int trial = 0; trial < 300; trial++) {
            Regime first = random.nextBoolean() ? Regime.LAMINAR : Regime.TURBULENT;
            Regime second = first == Regime.LAMINAR && random.nextBoolean() ? Regime.LAMINAR : Regime.TURBULENT;
            if (random.nextInt(3) == 0) {
                first = Regime.WAKE;
                second = Regime.WAKE;
            }
            double[] values = new double[ALL];
            for (int end = 0; end < 2; end++) {
                Regime regime = end == 0 ? first : second;
                double theta = 1e-3 * (0.7 + 0.6 * random.nextDouble());
                double speed = 1 + 0.2 * random.nextDouble();
                double h = regime == Regime.LAMINAR ? 2.2 + 2.5 * random.nextDouble() : 1.3 + random.nextDouble();
                values[4 * end + Unknowns.STRESS] = regime == Regime.LAMINAR ? 8.9 : 0.02 + 0.08 * random.nextDouble();
                values[4 * end + Unknowns.THETA] = theta;
                values[4 * end + Unknowns.DISPLACED] = h * theta * speed;
                values[4 * end + Unknowns.SPEED] = speed;
            }
            Dual[] byEarlier = residual(first, second, values, false);
            Dual[] byLater = residual(first, second, values, true);
            for (int v = 0; v < ALL; v++) {
                double step = v == SHIFT ? 1e-7 : 1e-5 * Math.abs(values[v]);
                double[] up = values.clone();
                double[] down = values.clone();
                up[v] += step;
                down[v] -= step;
                Dual[] above = residual(first, second, up, true);
                Dual[] below = residual(first, second, down, true);
                for (int r = 0; r < 3; r++) {
                    double slope = (above[r].value - below[r].value) / (2 * step);
                    double scale = Math.abs(slope) + 1e-2 / Math.max(1e-3, Math.abs(values[v]));
                    double exact = v < LATER ? byEarlier[r].slope(v) : byLater[r].slope(v - LATER);
                    assertEquals(slope, exact, 2e-4 * scale, first + " " + second + " " + r + " " + v);
                }
            }
        }
    }

    private static Dual[] residual(Regime first, Regime second, double[] v, boolean byLater) {
        Station a = Unknowns.station(first, REYNOLDS, v[0], v[1], v[2], v[3]);
        Station b = Unknowns.station(second, REYNOLDS, v[4], v[5], v[6], v[7]);
        Residuals residuals = new Residuals(REYNOLDS, 9);
        Dual xa = Dual.distance(0.4 + v[SHIFT], 1);
        Dual xb = Dual.distance(0.42 + v[SHIFT], 1);
        return byLater
                ? residuals.between(a.fixed(), b, xa, xb)
                : residuals.between(a, b.fixed(), xa.fixed(), xb.fixed());
    }
}
