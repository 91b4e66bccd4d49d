package trimwright.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LayerPropertyTest {
    private static final double REYNOLDS = 1e6;

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
            double[] values = new double[Dual.SIZE];
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
            Dual[] exact = residual(first, second, values);
            for (int v = 0; v < Dual.SIZE; v++) {
                double step = v == Unknowns.SHIFT ? 1e-7 : 1e-5 * Math.abs(values[v]);
                double[] up = values.clone();
                double[] down = values.clone();
                up[v] += step;
                down[v] -= step;
                Dual[] above = residual(first, second, up);
                Dual[] below = residual(first, second, down);
                for (int r = 0; r < 3; r++) {
                    double slope = (above[r].value - below[r].value) / (2 * step);
                    double scale = Math.abs(slope) + 1e-2 / Math.max(1e-3, Math.abs(values[v]));
                    assertEquals(slope, exact[r].slope(v), 2e-4 * scale, first + " " + second + " " + r + " " + v);
                }
            }
        }
    }

    private static Dual[] residual(Regime first, Regime second, double[] v) {
        Station a = Unknowns.station(first, REYNOLDS, 0, v[0], v[1], v[2], v[3]);
        Station b = Unknowns.station(second, REYNOLDS, Unknowns.LATER, v[4], v[5], v[6], v[7]);
        Dual shift = Dual.constant(v[Unknowns.SHIFT]).plus(Dual.unknown(0, Unknowns.SHIFT));
        Residuals residuals = new Residuals(REYNOLDS, 9);
        return residuals.between(a, b, shift.plus(0.4), shift.plus(0.42));
    }
}
