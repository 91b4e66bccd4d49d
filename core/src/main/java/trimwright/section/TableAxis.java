package trimwright.section;

/** One axis of a table: rising nodes, and the cubic Hermite polynomials of the interval that a coordinate lies in. */
final class TableAxis {
    /** Numbers of {@link #weights}. */
    static final int WEIGHTS = 8;

    private final double[] node;

    TableAxis(double[] node) {
        this.node = node;
    }

    double first() {
        return node[0];
    }

    double last() {
        return node[node.length - 1];
    }

    /** The same, first tried where it was before. */
    int interval(double at, int before) {
        return before + 1 < node.length && at >= node[before] && at < node[before + 1] ? before : interval(at);
    }

    /** Interval of a coordinate; outside the table the first or the last. */
    int interval(double at) {
        int low = 0;
        int high = node.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (at < node[middle]) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    /**
     * Weights of value and slope at the interval's begin and of both at its end, then the same for the derivative: eight
     * numbers. The coordinate must lie within the table.
     */
    void weights(int interval, double at, double[] out, int from) {
        double length = node[interval + 1] - node[interval];
        double u = (at - node[interval]) / length;
        double v = 1 - u;
        out[from] = v * v * (1 + 2 * u);
        out[from + 1] = u * v * v * length;
        out[from + 2] = u * u * (1 + 2 * v);
        out[from + 3] = -u * u * v * length;
        double rise = 6 * u * v / length;
        out[from + 4] = -rise;
        out[from + 5] = v * (v - 2 * u);
        out[from + 6] = rise;
        out[from + 7] = u * (u - 2 * v);
    }
}
