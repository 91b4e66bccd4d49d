package trimwright.platform;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;

/** Solution of six linear equations; not a number where they depend on each other. */
final class SixBySix {
    private SixBySix() {}

    static double[] solve(double[][] matrix, double[] right) {
        QRDecomposition decomposition = new QRDecomposition(new Array2DRowRealMatrix(matrix, false));
        return decomposition.getSolver().isNonSingular()
                ? decomposition
                        .getSolver()
                        .solve(new ArrayRealVector(right, false))
                        .toArray()
                : new double[] {Double.NaN, 0, 0, 0, 0, 0};
    }
}
