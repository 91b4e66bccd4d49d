package trimwright.target.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Published small problems (Hock and Schittkowski 1981; statements and answers from memory) and two of our own. */
class SearchTest {
    private static final Accuracy CLOSE = new Accuracy(1e-9, 0, 0);

    /** A problem given by its functions; derivatives by central differences. */
    private record Given(
            int equations, int limits, double[] lower, double[] upper, Function<double[], double[]> functions)
            implements Problem {
        @Override
        public double[] valuesAt(double[] x) {
            return functions.apply(x);
        }

        @Override
        public double[][] slopesAt(double[] x) {
            int n = x.length;
            double[][] slopes = new double[1 + equations + limits][n];
            for (int i = 0; i < n; i++) {
                double[] up = valuesAt(moved(x, i, 1e-6));
                double[] down = valuesAt(moved(x, i, -1e-6));
                for (int k = 0; k < up.length; k++) {
                    slopes[k][i] = (up[k] - down[k]) / 2e-6;
                }
            }
            return slopes;
        }

        @Override
        public Curvature curvatureAt(double[] x) {
            int n = x.length;
            double[][][] curvature = new double[1 + equations + limits][n][n];
            for (int i = 0; i < n; i++) {
                double[][] up = slopesAt(moved(x, i, 1e-4));
                double[][] down = slopesAt(moved(x, i, -1e-4));
                for (int k = 0; k < up.length; k++) {
                    for (int j = 0; j < n; j++) {
                        curvature[k][i][j] = (up[k][j] - down[k][j]) / 2e-4;
                    }
                }
            }
            return (weights, sum) -> {
                for (int k = 0; k < weights.length; k++) {
                    for (int i = 0; i < n; i++) {
                        for (int j = 0; j < n; j++) {
                            sum[i][j] += weights[k] * curvature[k][i][j];
                        }
                    }
                }
            };
        }

        private static double[] moved(double[] x, int i, double by) {
            double[] moved = x.clone();
            moved[i] += by;
            return moved;
        }
    }

    private static double[] valuesOf(Problem problem, Answer answer) {
        double[] values = problem.valuesAt(answer.x());
        assertTrue(values != null);
        return values;
    }

    private static double[] row(int n, double value) {
        double[] row = new double[n];
        java.util.Arrays.fill(row, value);
        return row;
    }

    @Test
    void problem71OfHockAndSchittkowski() {
        Problem problem = new Given(1, 1, row(4, 1), row(4, 5), x -> new double[] {
            x[0] * x[3] * (x[0] + x[1] + x[2]) + x[2],
            x[0] * x[0] + x[1] * x[1] + x[2] * x[2] + x[3] * x[3] - 40,
            x[0] * x[1] * x[2] * x[3] - 25
        });
        Answer answer = Search.from(problem, new double[] {1, 5, 5, 1}, CLOSE);
        assertTrue(answer.isConverged());
        assertArrayEquals(new double[] {1, 4.742999, 3.821150, 1.379408}, answer.x(), 1e-5);
        assertEquals(17.0140173, valuesOf(problem, answer)[0], 1e-6);
        assertTrue(answer.ofLower(0) > 0.1 && answer.ofLimit(0) > 0.1);
    }

    @Test
    void rosenbrockWithoutLimits() {
        Problem problem = new Given(0, 0, row(2, -5), row(2, 5), x -> {
            double a = x[1] - x[0] * x[0];
            return new double[] {100 * a * a + (1 - x[0]) * (1 - x[0])};
        });
        Answer answer = Search.from(problem, new double[] {-1.2, 1}, CLOSE);
        assertTrue(answer.isConverged());
        assertArrayEquals(new double[] {1, 1}, answer.x(), 1e-5);
    }

    /** Problem 6 of the collection: a curved valley as an equation. */
    @Test
    void problem6OfHockAndSchittkowski() {
        Problem problem = new Given(1, 0, row(2, -10), row(2, 10), x ->
                new double[] {(1 - x[0]) * (1 - x[0]), 10 * (x[1] - x[0] * x[0])});
        Answer answer = Search.from(problem, new double[] {-1.2, 1}, CLOSE);
        assertTrue(answer.isConverged());
        assertArrayEquals(new double[] {1, 1}, answer.x(), 1e-5);
    }

    /** f = x on the circle of radius 1 from far outside: the equation alone shapes the way. */
    @Test
    void aCurvedEquationIsFollowed() {
        Problem problem =
                new Given(1, 0, row(2, -4), row(2, 4), x -> new double[] {x[0], x[0] * x[0] + x[1] * x[1] - 1});
        Answer answer = Search.from(problem, new double[] {2, 3}, CLOSE);
        assertTrue(answer.isConverged());
        assertArrayEquals(new double[] {-1, 0}, answer.x(), 1e-5);
        assertEquals(-0.5, answer.ofEquation(0), 1e-5);
    }

    @Test
    void aFixedVariableStaysWhereItIs() {
        Problem problem = new Given(0, 0, new double[] {-2, 0.5}, new double[] {2, 0.5}, x ->
                new double[] {(x[0] - x[1]) * (x[0] - x[1]) + x[0]});
        Answer answer = Search.from(problem, new double[] {1, 0}, CLOSE);
        assertTrue(answer.isConverged());
        assertArrayEquals(new double[] {0, 0.5}, answer.x(), 1e-7);
    }

    @Test
    void aProblemWithoutAnAllowedPointSaysSo() {
        Problem problem = new Given(1, 1, row(2, -2), row(2, 2), x ->
                new double[] {x[0], x[0] * x[0] + x[1] * x[1] - 1, x[0] - 1.5});
        Answer answer = Search.from(problem, new double[] {0.5, 0.5}, CLOSE);
        assertEquals(Answer.Ending.NO_ALLOWED_POINT, answer.ending());
        assertTrue(answer.violation() > 0.1);
    }
}
