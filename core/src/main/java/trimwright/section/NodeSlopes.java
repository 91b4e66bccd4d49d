package trimwright.section;

/**
 * Slopes at the nodes of a row of values, for cubics between the nodes: Akima's mean of the secants on both sides, each
 * weighted by how little the other side bends, which does not overshoot at a step. At both ends zero, so that values held
 * beyond the row go on smoothly.
 *
 * <p>Source: AKIMA-1970, from memory.
 */
final class NodeSlopes {
    /** Keeps the weights from vanishing together where a row is straight; secants are of order 1. */
    private static final double STRAIGHT = 1e-12;

    private NodeSlopes() {}

    /** Slopes of y over x; as many as nodes, three at least. */
    static double[] of(double[] x, double[] y) {
        int n = x.length;
        // Two secants more at each end, led on straight.
        double[] secant = new double[n + 3];
        for (int i = 0; i < n - 1; i++) {
            secant[i + 2] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        secant[1] = 2 * secant[2] - secant[3];
        secant[0] = 2 * secant[1] - secant[2];
        secant[n + 1] = 2 * secant[n] - secant[n - 1];
        secant[n + 2] = 2 * secant[n + 1] - secant[n];
        double[] slope = new double[n];
        for (int i = 1; i < n - 1; i++) {
            double before = bend(secant[i + 2], secant[i + 3]);
            double after = bend(secant[i], secant[i + 1]);
            slope[i] = (before * secant[i + 1] + after * secant[i + 2]) / (before + after);
        }
        return slope;
    }

    private static double bend(double first, double second) {
        return Math.abs(second - first) + STRAIGHT;
    }
}
