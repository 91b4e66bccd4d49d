package trimwright.target;

/** Slopes at the nodes of a line of values, from the parabola through three neighbours; missing values are NaN. */
final class NodeSlope {
    private NodeSlope() {}

    /**
     * Slope at node {@code i}: the parabola through it and its two nearest neighbours, or the chord where there is only
     * one, or zero where there is none.
     *
     * @param x places of the nodes, rising
     * @param y values, NaN where missing; {@code y[i]} is present
     */
    static double at(double[] x, double[] y, int i) {
        if (present(y, i - 1) && present(y, i + 1)) {
            return parabola(x, y, i - 1, i, i + 1, x[i]);
        }
        int side = present(y, i + 1) ? 1 : -1;
        if (!present(y, i + side)) {
            return 0;
        }
        if (present(y, i + 2 * side)) {
            return parabola(x, y, i, i + side, i + 2 * side, x[i]);
        }
        return (y[i + side] - y[i]) / (x[i + side] - x[i]);
    }

    /**
     * A slope that is known, for use at node {@code i}. Beside a node without a value it is held to what the solved
     * neighbours say: where a branch ends its curve turns back on itself and is steep at the very end only.
     */
    static double known(double[] x, double[] y, int i, double known) {
        if (!isMissing(y, i - 1) && !isMissing(y, i + 1)) {
            return known;
        }
        double most = Math.abs(at(x, y, i));
        return Math.max(-most, Math.min(most, known));
    }

    private static boolean isMissing(double[] y, int i) {
        return i >= 0 && i < y.length && Double.isNaN(y[i]);
    }

    private static boolean present(double[] y, int i) {
        return i >= 0 && i < y.length && !Double.isNaN(y[i]);
    }

    /** Slope at {@code at} of the parabola through three nodes (Lagrange form). */
    private static double parabola(double[] x, double[] y, int a, int b, int c, double at) {
        double xa = x[a];
        double xb = x[b];
        double xc = x[c];
        return y[a] * (2 * at - xb - xc) / ((xa - xb) * (xa - xc))
                + y[b] * (2 * at - xa - xc) / ((xb - xa) * (xb - xc))
                + y[c] * (2 * at - xa - xb) / ((xc - xa) * (xc - xb));
    }
}
