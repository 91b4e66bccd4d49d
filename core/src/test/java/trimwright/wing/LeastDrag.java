package trimwright.wing;

/** Loading of least induced drag that a wing's strips can carry by the model's own downwash, in a stream from ahead. */
final class LeastDrag {
    private LeastDrag() {}

    /** Side force squared over least induced drag, both of unit density and speed (m2); 1/2 pi b^2 for a free ellipse. */
    static double forceSquaredOverDrag(PlacedWing placed) {
        Wing wing = placed.wing();
        int n = wing.strips();
        Influence influence = Influence.of(placed, new double[] {-1, 0, 0});
        // Minimise sum G_i w_ij G_j d_i with sum G_i d_i = 1: symmetric part times G = multiplier x d.
        double[][] a = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                a[i][j] = wing.stripWidth(i) * influence.y[j][i] + wing.stripWidth(j) * influence.y[i][j];
            }
            a[i][n] = wing.stripWidth(i);
        }
        double[] g = gauss(a);
        double force = 0;
        double drag = 0;
        for (int i = 0; i < n; i++) {
            force += g[i] * wing.stripWidth(i);
            for (int j = 0; j < n; j++) {
                drag += g[i] * wing.stripWidth(i) * influence.y[j][i] * g[j];
            }
        }
        return force * force / Math.abs(drag);
    }

    private static double[] gauss(double[][] a) {
        int n = a.length;
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                double f = a[i][k] / a[k][k];
                for (int j = k; j <= n; j++) {
                    a[i][j] -= f * a[k][j];
                }
            }
        }
        double[] x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = a[i][n];
            for (int j = i + 1; j < n; j++) {
                sum -= a[i][j] * x[j];
            }
            x[i] = sum / a[i][i];
        }
        return x;
    }
}
