package trimwright.target;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.jspecify.annotations.Nullable;

/** The inverse of a small matrix. */
final class SmallInverse {
    private final RealMatrix inverse;

    private SmallInverse(RealMatrix inverse) {
        this.inverse = inverse;
    }

    /** Null where there is none. */
    static @Nullable SmallInverse of(double[][] matrix) {
        LUDecomposition parts = new LUDecomposition(new Array2DRowRealMatrix(matrix, false));
        return parts.getSolver().isNonSingular()
                ? new SmallInverse(parts.getSolver().getInverse())
                : null;
    }

    double[] times(double[] vector) {
        return inverse.operate(vector);
    }
}
