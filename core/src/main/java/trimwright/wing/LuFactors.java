package trimwright.wing;

/**
 * Dense linear equations by LU with row exchanges, in place. Columns are arrays of their own, since the inner loops then
 * run along memory and several elements at a time; four columns go into one such loop, which spares three of four passes.
 */
final class LuFactors {
    private final double[][] column;
    private final int n;
    private final int[] row;

    /** Rows from this one on are nowhere exchanged. */
    private int exchanged;

    LuFactors(int n) {
        this.n = n;
        column = Rows.of(n, n);
        row = new int[n];
    }

    /** The matrix to fill before {@link #factor()}, column by column. */
    double[][] columns() {
        return column;
    }

    /** False where a pivot vanishes. */
    boolean factor() {
        exchanged = 0;
        for (int j = 0; j < n; j++) {
            double[] pivot = column[j];
            forward(pivot, j);
            int best = largest(pivot, j);
            if (!(Math.abs(pivot[best]) > 1e-300)) {
                return false;
            }
            row[j] = best;
            if (best != j) {
                exchanged = j + 1;
                for (int k = 0; k <= j; k++) {
                    exchange(column[k], j, best);
                }
            }
            double inverse = 1 / pivot[j];
            for (int i = j + 1; i < pivot.length; i++) {
                pivot[i] *= inverse;
            }
        }
        return true;
    }

    /** Place of the first largest from a place on; the place itself in most columns, which a quick look tells. */
    private static int largest(double[] values, int from) {
        double first = Math.abs(values[from]);
        double most = first;
        for (int i = from + 1; i < values.length; i++) {
            most = Math.max(most, Math.abs(values[i]));
        }
        int best = from;
        if (most > first) {
            while (Math.abs(values[best]) != most) {
                best++;
            }
        }
        return best;
    }

    /** Replaces b by the solution. */
    void solve(double[] b) {
        forward(b, n);
        int k = n - 1;
        for (; k >= 3; k -= 4) {
            upper(k, b);
            four(k, -1, b, 0, k - 3);
        }
        for (; k >= 0; k--) {
            b[k] /= column[k][k];
            one(k, b, 0, k);
        }
    }

    /** Exchanges rows and eliminates with the first so many columns. */
    private void forward(double[] b, int columns) {
        int exchanges = Math.min(columns, exchanged);
        for (int k = 0; k < exchanges; k++) {
            exchange(b, k, row[k]);
        }
        int k = 0;
        for (; k + 4 <= columns; k += 4) {
            lower(k, b);
            four(k, 1, b, k + 4, n);
        }
        if (k + 2 <= columns) {
            b[k + 1] -= column[k][k + 1] * b[k];
            two(k, b, k + 2, n);
            k += 2;
        }
        if (k < columns) {
            one(k, b, k + 1, n);
        }
    }

    /** Eliminates four unknowns of one another, downward from k. */
    private void lower(int k, double[] b) {
        double[] c0 = column[k];
        double[] c1 = column[k + 1];
        double[] c2 = column[k + 2];
        double b0 = b[k];
        double b1 = b[k + 1] - c0[k + 1] * b0;
        double b2 = b[k + 2] - c0[k + 2] * b0 - c1[k + 2] * b1;
        b[k + 1] = b1;
        b[k + 2] = b2;
        b[k + 3] = b[k + 3] - c0[k + 3] * b0 - c1[k + 3] * b1 - c2[k + 3] * b2;
    }

    /** Solves four unknowns of one another, upward from k. */
    private void upper(int k, double[] b) {
        double[] c0 = column[k];
        double[] c1 = column[k - 1];
        double[] c2 = column[k - 2];
        double b0 = b[k] / c0[k];
        double b1 = (b[k - 1] - c0[k - 1] * b0) / c1[k - 1];
        double b2 = (b[k - 2] - c0[k - 2] * b0 - c1[k - 2] * b1) / c2[k - 2];
        b[k] = b0;
        b[k - 1] = b1;
        b[k - 2] = b2;
        b[k - 3] = (b[k - 3] - c0[k - 3] * b0 - c1[k - 3] * b1 - c2[k - 3] * b2) / column[k - 3][k - 3];
    }

    private static void exchange(double[] values, int i, int k) {
        double t = values[i];
        values[i] = values[k];
        values[k] = t;
    }

    /** Subtracts a column times the unknown of its number, between two places. */
    private void one(int k, double[] b, int begin, int end) {
        double[] c = column[k];
        double factor = b[k];
        for (int i = begin; i < end; i++) {
            b[i] -= c[i] * factor;
        }
    }

    private void two(int k, double[] b, int begin, int end) {
        double[] c0 = column[k];
        double[] c1 = column[k + 1];
        double b0 = b[k];
        double b1 = b[k + 1];
        for (int i = begin; i < end; i++) {
            b[i] = b[i] - c0[i] * b0 - c1[i] * b1;
        }
    }

    /** Four columns, one way or the other from k. */
    private void four(int k, int way, double[] b, int begin, int end) {
        double[] c0 = column[k];
        double[] c1 = column[k + way];
        double[] c2 = column[k + 2 * way];
        double[] c3 = column[k + 3 * way];
        double b0 = b[k];
        double b1 = b[k + way];
        double b2 = b[k + 2 * way];
        double b3 = b[k + 3 * way];
        for (int i = begin; i < end; i++) {
            b[i] = b[i] - c0[i] * b0 - c1[i] * b1 - c2[i] * b2 - c3[i] * b3;
        }
    }
}
