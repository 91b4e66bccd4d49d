package trimwright.panel;

/**
 * Solves dense linear equations by elimination with row exchange. Own code and no library's: on plain rows of doubles the
 * inner loop runs as vector instructions, which decides the speed of a section.
 */
public final class DenseLu {
    /** Rows taken from the rest at once, so that each of these is read and written a quarter as often. */
    private static final int BLOCK = 4;

    private final double[][] lu;
    private final int[] rows;

    /**
     * Decomposes.
     *
     * @param matrix square; taken over and overwritten
     * @throws NoFlowException if the equations have no single solution, or contain what is no number
     */
    public DenseLu(double[][] matrix) {
        lu = matrix;
        int n = matrix.length;
        rows = new int[n];
        for (int i = 0; i < n; i++) {
            rows[i] = i;
        }
        for (int k = 0; k < n; k += BLOCK) {
            int end = Math.min(k + BLOCK, n);
            decomposeColumns(k, end);
            for (int p = k + 1; p < end; p++) {
                for (int q = k; q < p; q++) {
                    subtract(lu[p], lu[p][q], lu[q], end, n);
                }
            }
            for (int i = end; i < n; i++) {
                subtractBlock(lu[i], k, end);
            }
        }
    }

    /** Pivots, factors and rows of a block's own columns. */
    private void decomposeColumns(int begin, int end) {
        for (int k = begin; k < end; k++) {
            exchange(k, pivot(k));
            double[] top = lu[k];
            double inverse = 1 / top[k];
            for (int i = k + 1; i < lu.length; i++) {
                double[] row = lu[i];
                double factor = row[k] * inverse;
                row[k] = factor;
                for (int j = k + 1; j < end; j++) {
                    row[j] -= factor * top[j];
                }
            }
        }
    }

    /** Takes a block's rows from a row below it, behind the block's columns. */
    private void subtractBlock(double[] row, int begin, int end) {
        if (end - begin == BLOCK) {
            subtractFour(row, row, lu, begin, end);
            return;
        }
        for (int k = begin; k < end; k++) {
            subtract(row, row[k], lu[k], end, row.length);
        }
    }

    /** Takes so many rows from a sum, each times its factor. */
    private static void subtractRows(double[] sum, double[] factors, double[][] rows, int begin, int end) {
        int k = begin;
        for (; k + BLOCK <= end; k += BLOCK) {
            subtractFour(sum, factors, rows, k, 0);
        }
        for (; k < end; k++) {
            subtract(sum, factors[k], rows[k], 0, sum.length);
        }
    }

    private static void subtractFour(double[] sum, double[] factors, double[][] rows, int begin, int from) {
        double a = factors[begin];
        double b = factors[begin + 1];
        double c = factors[begin + 2];
        double d = factors[begin + 3];
        double[] first = rows[begin];
        double[] second = rows[begin + 1];
        double[] third = rows[begin + 2];
        double[] fourth = rows[begin + 3];
        for (int j = from; j < sum.length; j++) {
            sum[j] -= a * first[j] + b * second[j] + c * third[j] + d * fourth[j];
        }
    }

    private int pivot(int k) {
        int best = k;
        double largest = Math.abs(lu[k][k]);
        for (int i = k + 1; i < lu.length; i++) {
            double size = Math.abs(lu[i][k]);
            if (size > largest) {
                largest = size;
                best = i;
            }
        }
        if (!(largest > 1e-300 && largest < 1e300)) {
            throw new NoFlowException("the equations of the flow have no single solution");
        }
        return best;
    }

    private void exchange(int k, int other) {
        double[] row = lu[k];
        lu[k] = lu[other];
        lu[other] = row;
        int number = rows[k];
        rows[k] = rows[other];
        rows[other] = number;
    }

    private static void subtract(double[] row, double factor, double[] top, int from, int to) {
        for (int j = from; j < to; j++) {
            row[j] -= factor * top[j];
        }
    }

    /** Solution for a right side; a new array. */
    public double[] solve(double[] right) {
        int n = lu.length;
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = right[rows[i]] - dot(lu[i], x, 0, i);
        }
        for (int i = n - 1; i >= 0; i--) {
            x[i] = (x[i] - dot(lu[i], x, i + 1, n)) / lu[i][i];
        }
        return x;
    }

    /** Sum of products of a part, in four sums that do not wait for each other. */
    static double dot(double[] a, double[] b, int from, int to) {
        double first = 0;
        double second = 0;
        double third = 0;
        double fourth = 0;
        int j = from;
        for (; j + 3 < to; j += 4) {
            first += a[j] * b[j];
            second += a[j + 1] * b[j + 1];
            third += a[j + 2] * b[j + 2];
            fourth += a[j + 3] * b[j + 3];
        }
        for (; j < to; j++) {
            first += a[j] * b[j];
        }
        return first + second + (third + fourth);
    }

    /** Solutions for many right sides at once: a row for each equation, a column for each side; new arrays. */
    double[][] solveAll(double[][] right) {
        int n = lu.length;
        double[][] x = new double[n][];
        for (int i = 0; i < n; i++) {
            double[] sum = right[rows[i]].clone();
            subtractRows(sum, lu[i], x, 0, i);
            x[i] = sum;
        }
        for (int i = n - 1; i >= 0; i--) {
            double[] sum = x[i];
            subtractRows(sum, lu[i], x, i + 1, n);
            double inverse = 1 / lu[i][i];
            for (int j = 0; j < sum.length; j++) {
                sum[j] *= inverse;
            }
        }
        return x;
    }
}
