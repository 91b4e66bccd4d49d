package trimwright.foil;

/**
 * A curve through a table, continuous with its slope, that makes no bump of its own between two points (Fritsch and
 * Butland 1984: harmonic mean of the neighbouring slopes). Constant outside the table.
 */
final class MonotoneCurve {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    MonotoneCurve(double[] x, double[] y) {
        this.x = x.clone();
        this.y = y.clone();
        this.slope = new double[x.length];
        // The end slopes stay zero: outside the table the curve is constant.
        for (int i = 1; i < x.length - 1; i++) {
            double before = x[i] - x[i - 1];
            double after = x[i + 1] - x[i];
            double left = (y[i] - y[i - 1]) / before;
            double right = (y[i + 1] - y[i]) / after;
            if (left * right > 0) {
                double w = (before + 2 * after) / (3 * (before + after));
                slope[i] = left * right / (w * right + (1 - w) * left);
            }
        }
    }

    /** Slope there; zero outside the table. */
    double slopeAt(double at) {
        int last = x.length - 1;
        if (!(at > x[0]) || at >= x[last]) {
            return 0;
        }
        int i = 0;
        while (at > x[i + 1]) {
            i++;
        }
        double h = x[i + 1] - x[i];
        double t = (at - x[i]) / h;
        return 6 * t * (1 - t) * (y[i + 1] - y[i]) / h
                + slope[i] * (1 - t) * (1 - 3 * t)
                + slope[i + 1] * t * (3 * t - 2);
    }

    double at(double at) {
        if (!(at > x[0])) {
            return y[0];
        }
        int last = x.length - 1;
        if (at >= x[last]) {
            return y[last];
        }
        int i = 0;
        while (at > x[i + 1]) {
            i++;
        }
        double h = x[i + 1] - x[i];
        double t = (at - x[i]) / h;
        double r = 1 - t;
        return r * r * (y[i] * (1 + 2 * t) + slope[i] * h * t)
                + t * t * (y[i + 1] * (3 - 2 * t) - slope[i + 1] * h * r);
    }
}
