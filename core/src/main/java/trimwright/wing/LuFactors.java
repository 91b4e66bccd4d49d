package trimwright.wing;

/**
 * Dense linear equations by LU with row exchanges, in place. Columns are arrays of their own, since the inner loops then
 * run along memory and several elements at a time; four columns go into one such loop, which spares three of four passes.
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
        for (int j = 0; j < n; j++) {
            double[] pivot = column[j];
            forward(pivot, j);
            int best = j;
            double size = Math.abs(pivot[j]);
            for (int i = j + 1; i < n; i++) {
                double other = Math.abs(pivot[i]);
                if (other > size) {
                    size = other;
                    best = i;
                }
            }
            if (!(size > 1e-300)) {
                return false;
            }
            row[j] = best;
            if (best != j) {
                for (int k = 0; k <= j; k++) {
                    exchange(column[k], j, best);
                }
            }
            double inverse = 1 / pivot[j];
            for (int i = j + 1; i < n; i++) {
                pivot[i] *= inverse;
            }
        }
        return true;
    }

    /** Replaces b by the solution. */
    void solve(double[] b) {
        forward(b, n);
        int k = n - 1;
        for (; k >= 3; k -= 4) {
            double[] c0 = column[k];
            double[] c1 = column[k - 1];
            double[] c2 = column[k - 2];
            double[] c3 = column[k - 3];
            double b0 = b[k] / c0[k];
            double b1 = (b[k - 1] - c0[k - 1] * b0) / c1[k - 1];
            double b2 = (b[k - 2] - c0[k - 2] * b0 - c1[k - 2] * b1) / c2[k - 2];
            double b3 = (b[k - 3] - c0[k - 3] * b0 - c1[k - 3] * b1 - c2[k - 3] * b2) / c3[k - 3];
            b[k] = b0;
            b[k - 1] = b1;
            b[k - 2] = b2;
            b[k - 3] = b3;
            subtract(c0, b0, c1, b1, c2, b2, c3, b3, b, 0, k - 3);
        }
        for (; k >= 0; k--) {
            b[k] /= column[k][k];
            subtract(column[k], b[k], b, 0, k);
        }
    }

    /** Exchanges rows and eliminates with the first so many columns. */
    private void forward(double[] b, int columns) {
        for (int k = 0; k < columns; k++) {
            exchange(b, k, row[k]);
        }
        int k = 0;
        for (; k + 4 <= columns; k += 4) {
            double[] c0 = column[k];
            double[] c1 = column[k + 1];
            double[] c2 = column[k + 2];
            double[] c3 = column[k + 3];
            double b0 = b[k];
            double b1 = b[k + 1] - c0[k + 1] * b0;
            double b2 = b[k + 2] - c0[k + 2] * b0 - c1[k + 2] * b1;
            double b3 = b[k + 3] - c0[k + 3] * b0 - c1[k + 3] * b1 - c2[k + 3] * b2;
            b[k + 1] = b1;
            b[k + 2] = b2;
            b[k + 3] = b3;
            subtract(c0, b0, c1, b1, c2, b2, c3, b3, b, k + 4, n);
        }
        for (; k < columns; k++) {
            subtract(column[k], b[k], b, k + 1, n);
        }
    }

    private static void exchange(double[] values, int i, int k) {
        double t = values[i];
        values[i] = values[k];
        values[k] = t;
    }

    private static void subtract(double[] from, double factor, double[] to, int begin, int end) {
        for (int i = begin; i < end; i++) {
            to[i] -= from[i] * factor;
        }
    }

    private static void subtract(
            double[] c0,
            double b0,
            double[] c1,
            double b1,
            double[] c2,
            double b2,
            double[] c3,
            double b3,
            double[] to,
            int begin,
            int end) {
        for (int i = begin; i < end; i++) {
            to[i] = to[i] - c0[i] * b0 - c1[i] * b1 - c2[i] * b2 - c3[i] * b3;
        }
    }
}
