package trimwright.wing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import trimwright.boat.WingSpec;
import trimwright.evidence.ValidatedAgainst;

class WingGapValidationTest {
    @Test
    @ValidatedAgainst(
            source = "GAP-IMAGE",
            where = "closed-form least induced drag of an upright wing over a plane: e over gap/head height",
            tolerance = "0.5 percent: optimum found over 60 strips against the closed form (K, E by AGM in the test)")
    void leastInducedDragOverTheSeaIsTheClosedForm() {
        double[] gap = {.01, .02, .05, .1, .2, .3, .5};
        double[] e = {.6662, .6226, .5441, .4602, .3434, .2555, .1268};
        for (int k = 0; k < gap.length; k++) {
            assertEquals(e[k], closedForm(gap[k]), 1e-4);
            assertEquals(e[k], leastDragEfficiency(gap[k]), 0.005 * e[k], "gap " + gap[k]);
        }
    }

    /**
     * Efficiency of the best loading that the wing's strips can carry by the model's own downwash: drag is minimised for
     * given side force.
     */
    private static double leastDragEfficiency(double gap) {
        double head = 10;
        double foot = gap * head;
        double span = head - foot;
        int n = 60;
        WingSpec spec = TestWings.tapered(span, 0.01, 0.01);
        Wing wing = Wing.of(spec, TestWings.THIN, n);
        Influence influence = Influence.of(wing.placedAt(0, foot), new double[] {-1, 0, 0});
        double[][] downwash = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                downwash[i][j] = influence.y[j][i];
            }
        }
        // Minimise sum G_i w_ij G_j d_i with sum G_i d_i = 1: symmetric part times G = multiplier x d.
        double[][] a = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                a[i][j] = wing.stripWidth(i) * downwash[i][j] + wing.stripWidth(j) * downwash[j][i];
            }
            a[i][n] = wing.stripWidth(i);
        }
        double[] g = gauss(a);
        double force = 0;
        double drag = 0;
        for (int i = 0; i < n; i++) {
            force += g[i] * wing.stripWidth(i);
            for (int j = 0; j < n; j++) {
                drag += g[i] * wing.stripWidth(i) * downwash[i][j] * g[j];
            }
        }
        // Di = Y^2/(2 pi q b^2 e) with density and speed 1, q 1/2.
        return force * force / (Math.PI * head * head * Math.abs(drag));
    }

    private static double[] gauss(double[][] a) {
        int n = a.length;
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                double f = a[i][k] / a[k][k];
                for (int j = k; j <= n; j++) {
                    a[i][j] -= f * a[k][j];
                }
            }
        }
        double[] x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = a[i][n];
            for (int j = i + 1; j < n; j++) {
                sum -= a[i][j] * x[j];
            }
            x[i] = sum / a[i][i];
        }
        return x;
    }

    private static double closedForm(double g) {
        // Complete elliptic integrals of modulus k' = sqrt(1 - g^2) by the arithmetic-geometric mean.
        double a = 1;
        double b = g;
        double c2 = 1 - g * g;
        double sum = 0.5 * c2;
        double power = 0.5;
        for (int i = 0; i < 40; i++) {
            double next = 0.5 * (a + b);
            double c = 0.5 * (a - b);
            b = Math.sqrt(a * b);
            a = next;
            power *= 2;
            sum += power * c * c;
        }
        // E/K = 1 - sum of 2^(i-1) c_i^2.
        return 1 + g * g - 2 * (1 - sum);
    }
}
