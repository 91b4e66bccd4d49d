package trimwright.fleet;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;

/** Solves the normal equations of moments: what each boat did otherwise than the mean of the others. */
final class Effects {
    private Effects() {}

    /**
     * Each boat less the mean of the others; NaN for boats that were compared with none, and for all where the boats fall into
     * groups that never met.
     */
    static double[] of(BlockSums sums) {
        int boats = sums.boats();
        int[] there = present(sums);
        double[] found = new double[boats];
        Arrays.fill(found, Double.NaN);
        int n = there.length;
        if (n < 2) {
            return found;
        }
        boolean hasWind = sums.matrix()[boats][boats] > 1e-9;
        int size = n + (hasWind ? 1 : 0);
        double[][] matrix = new double[size][size];
        double[] right = new double[size];
        for (int i = 0; i < size; i++) {
            int from = i < n ? there[i] : boats;
            right[i] = sums.right()[from];
            for (int k = 0; k < size; k++) {
                // Effects are to add up to nothing: the same number everywhere takes the freedom out and moves nothing
                // else.
                matrix[i][k] = sums.matrix()[from][k < n ? there[k] : boats] + (i < n && k < n ? 1 : 0);
            }
        }
        DecompositionSolver solver = new LUDecomposition(new Array2DRowRealMatrix(matrix, false), 1e-9).getSolver();
        if (!solver.isNonSingular()) {
            return found;
        }
        double[] effects = solver.solve(new ArrayRealVector(right, false)).toArray();
        for (int i = 0; i < n; i++) {
            found[there[i]] = effects[i] * n / (n - 1);
        }
        return found;
    }

    private static int[] present(BlockSums sums) {
        int[] there = new int[sums.boats()];
        int n = 0;
        for (int b = 0; b < sums.boats(); b++) {
            if (sums.matrix()[b][b] > 0) {
                there[n++] = b;
            }
        }
        return Arrays.copyOf(there, n);
    }
}
