package trimwright.wing;

/**
 * Dense linear equations by LU with row exchanges, in place. Columns are arrays of their own, since the inner loops then
 * run along memory and several elements at a time.
 */
final class LuFactors {
    private final double[][] column;
    private final int n;
    private final int[] row;

    LuFactors(int n) {
        this.n = n;
        column = new double[n][n];
        row = new int[n];
    }

    /** The matrix to fill before {@link #factor()}, column by column. */
    double[][] columns() {
        return column;
    }

    /** False where a pivot vanishes. */
    boolean factor() {
        for (int k = 0; k < n; k++) {
            double[] pivot = column[k];
            int best = k;
            double size = Math.abs(pivot[k]);
            for (int i = k + 1; i < n; i++) {
                double other = Math.abs(pivot[i]);
                if (other > size) {
                    size = other;
                    best = i;
                }
            }
            if (!(size > 1e-300)) {
                return false;
            }
            row[k] = best;
            if (best != k) {
                for (double[] any : column) {
                    double t = any[k];
                    any[k] = any[best];
                    any[best] = t;
                }
            }
            double inverse = 1 / pivot[k];
            for (int i = k + 1; i < n; i++) {
                pivot[i] *= inverse;
            }
            for (int j = k + 1; j < n; j++) {
                subtract(pivot, column[j], column[j][k], k + 1, n);
            }
        }
        return true;
    }

    /** Replaces b by the solution. */
    void solve(double[] b) {
        for (int k = 0; k < n; k++) {
            double t = b[row[k]];
            b[row[k]] = b[k];
            b[k] = t;
        }
        for (int j = 0; j < n; j++) {
            subtract(column[j], b, b[j], j + 1, n);
        }
        for (int j = n - 1; j >= 0; j--) {
            b[j] /= column[j][j];
            subtract(column[j], b, b[j], 0, j);
        }
    }

    private static void subtract(double[] from, double[] to, double factor, int begin, int end) {
        for (int i = begin; i < end; i++) {
            to[i] -= from[i] * factor;
        }
    }
}
