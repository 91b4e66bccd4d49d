package trimwright.wing;

/** Dense linear equations by LU with row exchanges, in place, row-major. */
final class LuFactors {
    private final double[] a;
    private final int n;
    private final int[] row;

    LuFactors(int n) {
        this.n = n;
        a = new double[n * n];
        row = new int[n];
    }

    /** The matrix to fill before {@link #factor()}. */
    double[] matrix() {
        return a;
    }

    /** False where a pivot vanishes. */
    boolean factor() {
        for (int k = 0; k < n; k++) {
            int best = k;
            double size = Math.abs(a[k * n + k]);
            for (int i = k + 1; i < n; i++) {
                double other = Math.abs(a[i * n + k]);
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
                for (int j = 0; j < n; j++) {
                    double t = a[k * n + j];
                    a[k * n + j] = a[best * n + j];
                    a[best * n + j] = t;
                }
            }
            double inverse = 1 / a[k * n + k];
            int top = k * n;
            for (int i = k + 1; i < n; i++) {
                int at = i * n;
                double f = a[at + k] * inverse;
                a[at + k] = f;
                for (int j = k + 1; j < n; j++) {
                    a[at + j] -= f * a[top + j];
                }
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
        for (int i = 1; i < n; i++) {
            double sum = b[i];
            for (int j = 0; j < i; j++) {
                sum -= a[i * n + j] * b[j];
            }
            b[i] = sum;
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = b[i];
            for (int j = i + 1; j < n; j++) {
                sum -= a[i * n + j] * b[j];
            }
            b[i] = sum / a[i * n + i];
        }
    }
}
