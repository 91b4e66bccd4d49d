package trimwright.target.search;

/** Small dense products and solutions. */
final class Dense {
    private Dense() {}

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    static double[] times(double[][] m, double[] v) {
        double[] product = new double[m.length];
        for (int i = 0; i < m.length; i++) {
            product[i] = dot(m[i], v);
        }
        return product;
    }

    /** a + s b. */
    static double[] plus(double[] a, double s, double[] b) {
        double[] sum = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            sum[i] = a[i] + s * b[i];
        }
        return sum;
    }

    static double largest(double[] v) {
        double largest = 0;
        for (double value : v) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest;
    }

    /** Solves m x = b by elimination with row exchange; both are overwritten. A zero pivot is given a tiny size. */
    static double[] solve(double[][] m, double[] b) {
        int n = b.length;
        for (int k = 0; k < n; k++) {
            int best = k;
            for (int i = k + 1; i < n; i++) {
                if (Math.abs(m[i][k]) > Math.abs(m[best][k])) {
                    best = i;
                }
            }
            double[] row = m[best];
            m[best] = m[k];
            m[k] = row;
            double value = b[best];
            b[best] = b[k];
            b[k] = value;
            double pivot = Math.abs(row[k]) < 1e-300 ? 1e-300 : row[k];
            for (int i = k + 1; i < n; i++) {
                double factor = m[i][k] / pivot;
                if (factor != 0) {
                    for (int j = k; j < n; j++) {
                        m[i][j] -= factor * row[j];
                    }
                    b[i] -= factor * b[k];
                }
            }
            row[k] = pivot;
        }
        for (int k = n - 1; k >= 0; k--) {
            double sum = b[k];
            for (int j = k + 1; j < n; j++) {
                sum -= m[k][j] * b[j];
            }
            b[k] = sum / m[k][k];
        }
        return b;
    }
}
