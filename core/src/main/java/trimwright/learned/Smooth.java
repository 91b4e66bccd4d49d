package trimwright.learned;

import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import trimwright.units.Units;

/**
 * A smooth function over wind and angle that is nothing where nothing is known: a Gaussian process of mean zero with a squared
 * exponential covariance, carried by knots. Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), eq. 2.31
 * and section 8.3.1 (subset of regressors). Lengths and size are chosen.
 */
final class Smooth {
    /** Over so much wind (m/s) and angle (rad) what is learned at one place says something of another. */
    static final double WIND_LENGTH = Units.fromKnots(5);

    static final double ANGLE_LENGTH = Units.fromDegrees(25);

    /** By how much a boat may differ from her model (-), one standard deviation. */
    static final double SIZE = 0.04;

    /** Knots lie closer than lengths, or the function would sag between them (share of a length). */
    private static final double SPACING = 0.8;

    private static final double FROM_WIND = Units.fromKnots(4);
    private static final double TO_WIND = Units.fromKnots(30);
    private static final double FROM_ANGLE = Units.fromDegrees(25);
    private static final double TO_ANGLE = Units.fromDegrees(175);

    /** Added to the diagonal so that rounding leaves it positive (-). */
    private static final double JITTER = 1e-8;

    private final double[][] knots;
    private final RealMatrix whitening;

    Smooth() {
        int winds = 1 + (int) Math.ceil((TO_WIND - FROM_WIND) / (SPACING * WIND_LENGTH));
        int angles = 1 + (int) Math.ceil((TO_ANGLE - FROM_ANGLE) / (SPACING * ANGLE_LENGTH));
        knots = new double[winds * angles][];
        for (int i = 0; i < winds; i++) {
            for (int j = 0; j < angles; j++) {
                knots[i * angles + j] =
                        new double[] {FROM_WIND + i * SPACING * WIND_LENGTH, FROM_ANGLE + j * SPACING * ANGLE_LENGTH};
            }
        }
        RealMatrix covariance = MatrixUtils.createRealMatrix(knots.length, knots.length);
        for (int i = 0; i < knots.length; i++) {
            for (int j = 0; j < knots.length; j++) {
                double jitter = i == j ? JITTER : 0;
                covariance.setEntry(i, j, alike(knots[i][0] - knots[j][0], knots[i][1] - knots[j][1]) + jitter);
            }
        }
        whitening = new CholeskyDecomposition(covariance).getL();
    }

    /** Number of weights, each of which is standard normal beforehand. */
    int size() {
        return knots.length;
    }

    /** How alike two places are (-): 1 at no distance, 0 far off. */
    static double alike(double wind, double angle) {
        double a = wind / WIND_LENGTH;
        double b = angle / ANGLE_LENGTH;
        return StrictMath.exp(-0.5 * (a * a + b * b));
    }

    /** What each weight adds at a wind (m/s) and angle (rad), into the first places of a row. */
    void fill(double[] row, double wind, double angle) {
        // Forward substitution: the row solves L row = k.
        for (int i = 0; i < knots.length; i++) {
            double rest = SIZE * alike(wind - knots[i][0], angle - knots[i][1]);
            for (int j = 0; j < i; j++) {
                rest -= whitening.getEntry(i, j) * row[j];
            }
            row[i] = rest / whitening.getEntry(i, i);
        }
    }
}
