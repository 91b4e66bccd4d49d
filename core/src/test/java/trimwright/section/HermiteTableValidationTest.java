package trimwright.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.analysis.interpolation.PiecewiseBicubicSplineInterpolator;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

class HermiteTableValidationTest {
    private static final double[] X = {-1, -0.6, -0.1, 0.3, 0.8, 1.4, 2};
    private static final double[] Y = {0, 0.5, 0.9, 1.5, 2};
    private static final double[] Z = {1, 2, 2.5, 3.5};

    @Test
    void nodesAreMet() {
        HermiteTable table = table();
        double[] out = new double[4];
        for (double x : X) {
            for (double y : Y) {
                for (double z : Z) {
                    at(table, x, y, z, out);
                    assertEquals(function(x, y, z), out[0], 1e-13);
                }
            }
        }
    }

    @Test
    void derivativesAreThoseOfTheValueAndContinuous() {
        HermiteTable table = table();
        Random random = new Random(1);
        double[] out = new double[4];
        double[] low = new double[4];
        double[] high = new double[4];
        double h = 1e-6;
        for (int i = 0; i < 2000; i++) {
            // Every other point on a node of one axis, where pieces meet.
            double x = i % 2 == 0 ? X[1 + random.nextInt(5)] : -0.99 + 2.9 * random.nextDouble();
            double y = i % 4 == 1 ? Y[1 + random.nextInt(3)] : 0.01 + 1.9 * random.nextDouble();
            double z = i % 8 == 3 ? Z[1 + random.nextInt(2)] : 1.01 + 2.4 * random.nextDouble();
            at(table, x, y, z, out);
            at(table, x - h, y, z, low);
            at(table, x + h, y, z, high);
            // Central differences over a kink of the second derivative: h times it, here up to some tens.
            assertEquals((high[0] - low[0]) / (2 * h), out[1], 1e-4);
            at(table, x, y - h, z, low);
            at(table, x, y + h, z, high);
            assertEquals((high[0] - low[0]) / (2 * h), out[2], 1e-4);
            at(table, x, y, z - h, low);
            at(table, x, y, z + h, high);
            assertEquals((high[0] - low[0]) / (2 * h), out[3], 1e-4);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "HIPPARCHUS",
            where =
                    "PiecewiseBicubicSplineInterpolator, Akima's splines crosswise, of a smooth function of two coordinates",
            tolerance = "twice the library's own distance from the function: both are approximations of one order")
    void betweenNodesAsNearAsALibrarysCubics() {
        int n = 21;
        double[] x = new double[n];
        double[] y = new double[n];
        double[][] plane = new double[n][n];
        double[][][][] v = new double[1][n][n][3];
        for (int i = 0; i < n; i++) {
            x[i] = 0.1 * i;
            y[i] = 0.1 * i;
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                plane[i][j] = function(x[i], y[j], 0);
                for (int k = 0; k < 3; k++) {
                    v[0][i][j][k] = plane[i][j];
                }
            }
        }
        HermiteTable table = new HermiteTable(x, y, new double[] {0, 1, 2}, v);
        var library = new PiecewiseBicubicSplineInterpolator().interpolate(x, y, plane);
        Random random = new Random(2);
        double[] out = new double[4];
        double worst = 0;
        double worstOfLibrary = 0;
        for (int i = 0; i < 2000; i++) {
            double px = 0.2 + 1.6 * random.nextDouble();
            double py = 0.2 + 1.6 * random.nextDouble();
            at(table, px, py, 0.5, out);
            double exact = function(px, py, 0);
            worst = Math.max(worst, Math.abs(out[0] - exact));
            worstOfLibrary = Math.max(worstOfLibrary, Math.abs(library.value(px, py) - exact));
        }
        assertTrue(worst < 2 * worstOfLibrary + 1e-12, worst + " against " + worstOfLibrary);
    }

    @Test
    void aStepIsNotOvershot() {
        double[][][][] v = new double[1][X.length][Y.length][Z.length];
        for (int i = 3; i < X.length; i++) {
            for (double[] row : v[0][i]) {
                Arrays.fill(row, 1);
            }
        }
        HermiteTable table = new HermiteTable(X, Y, Z, v);
        double[] out = new double[4];
        for (double x = -1; x <= 2; x += 0.01) {
            at(table, x, 0.7, 2.2, out);
            assertTrue(out[0] >= -1e-9 && out[0] <= 1 + 1e-9, x + ": " + out[0]);
        }
    }

    private static HermiteTable table() {
        double[][][][] v = new double[2][X.length][Y.length][Z.length];
        for (int i = 0; i < X.length; i++) {
            for (int j = 0; j < Y.length; j++) {
                for (int k = 0; k < Z.length; k++) {
                    v[1][i][j][k] = function(X[i], Y[j], Z[k]);
                }
            }
        }
        return new HermiteTable(X, Y, Z, v);
    }

    private static void at(HermiteTable table, double x, double y, double z, double[] out) {
        HermiteTable.Spot spot = new HermiteTable.Spot();
        table.placeYz(y, z, spot);
        table.placeX(x, spot);
        table.at(table.quantities() - 1, spot, out);
    }

    private static double function(double x, double y, double z) {
        return Math.sin(2 * x + y) + 0.3 * z * Math.cos(x - 2 * y) + 0.1 * z * z;
    }
}
