package trimwright.target.search;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;

/** Inverse of a symmetric matrix after its eigenvalues have been made positive. */
final class PositiveInverse {
    /** Least eigenvalue kept (scaled objective over scaled variables squared): chosen, far below the ridge's own. */
    private static final double LEAST = 1e-5;

    private PositiveInverse() {}

    static double[][] of(double[][] symmetric) {
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(new Array2DRowRealMatrix(symmetric, false));
        RealMatrix vectors = eigen.getV();
        int n = symmetric.length;
        double[][] inverse = new double[n][n];
        for (int k = 0; k < n; k++) {
            double value = Math.max(LEAST, Math.abs(eigen.getEigenvalue(k)));
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    inverse[i][j] += vectors.getEntry(i, k) * vectors.getEntry(j, k) / value;
                }
            }
        }
        return inverse;
    }
}
