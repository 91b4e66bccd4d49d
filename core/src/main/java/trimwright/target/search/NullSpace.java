package trimwright.target.search;

/**
 * Splits steps into those that change the equations (range, Y) and those that do not (null space, Z), by Householder
 * reflections of the transposed Jacobian: A' = [Y Z] [R; 0].
 */
final class NullSpace {
    private final int n;
    private final int m;
    /** Reflection vectors, one a column of A'. */
    private final double[][] v;

    private final double[][] r;
    private final double[][] z;

    /** @param a rows of the Jacobian of the equations, fewer than its columns */
    NullSpace(double[][] a, int variables) {
        n = variables;
        m = a.length;
        v = new double[m][n];
        r = new double[m][m];
        double[][] columns = new double[m][];
        for (int k = 0; k < m; k++) {
            columns[k] = a[k].clone();
        }
        for (int k = 0; k < m; k++) {
            reflectColumn(columns, k);
        }
        z = new double[n - m][];
        for (int j = 0; j < n - m; j++) {
            double[] unit = new double[n];
            unit[m + j] = 1;
            z[j] = applyQ(unit);
        }
    }

    private void reflectColumn(double[][] columns, int k) {
        double[] column = columns[k];
        double norm = 0;
        for (int i = k; i < n; i++) {
            norm += column[i] * column[i];
        }
        norm = Math.sqrt(norm);
        double head = column[k] > 0 ? -norm : norm;
        double[] w = v[k];
        for (int i = k; i < n; i++) {
            w[i] = column[i];
        }
        w[k] -= head;
        double length = Math.sqrt(Dense.dot(w, w));
        if (length > 0) {
            for (int i = k; i < n; i++) {
                w[i] /= length;
            }
        }
        for (int j = k; j < m; j++) {
            reflect(w, columns[j]);
            r[k][j] = columns[j][k];
        }
    }

    private static void reflect(double[] w, double[] x) {
        double twice = 2 * Dense.dot(w, x);
        for (int i = 0; i < x.length; i++) {
            x[i] -= twice * w[i];
        }
    }

    private double[] applyQ(double[] x) {
        double[] y = x.clone();
        for (int k = m - 1; k >= 0; k--) {
            reflect(v[k], y);
        }
        return y;
    }

    /** Rows that span the null space of A, orthonormal. */
    double[][] basis() {
        return z;
    }

    /** Shortest step with A p = c. */
    double[] shortestStep(double[] c) {
        double[] t = new double[n];
        for (int k = 0; k < m; k++) {
            double sum = c[k];
            for (int j = 0; j < k; j++) {
                sum -= r[j][k] * t[j];
            }
            t[k] = sum / pivot(k);
        }
        return applyQ(t);
    }

    /** Multipliers with A' lambda nearest to h. */
    double[] multipliers(double[] h) {
        double[] t = h.clone();
        for (int k = 0; k < m; k++) {
            reflect(v[k], t);
        }
        double[] lambda = new double[m];
        for (int k = m - 1; k >= 0; k--) {
            double sum = t[k];
            for (int j = k + 1; j < m; j++) {
                sum -= r[k][j] * lambda[j];
            }
            lambda[k] = sum / pivot(k);
        }
        return lambda;
    }

    /** Dependent equations give a zero pivot; a tiny one keeps the step finite and the trust region shortens it. */
    private double pivot(int k) {
        return Math.abs(r[k][k]) < 1e-10 ? 1e-10 : r[k][k];
    }
}
