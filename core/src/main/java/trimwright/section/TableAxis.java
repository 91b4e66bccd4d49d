package trimwright.section;

/** One axis of a table: rising nodes, and the cubic Hermite polynomials of the interval that a coordinate lies in. */
final class TableAxis {
    private final double[] node;

    TableAxis(double[] node) {
        this.node = node;
    }

    int nodes() {
        return node.length;
    }

    double first() {
        return node[0];
    }

    double last() {
        return node[node.length - 1];
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
    void weights(int interval, double at, double[] out) {
        double length = node[interval + 1] - node[interval];
        double u = (at - node[interval]) / length;
        double v = 1 - u;
        out[0] = v * v * (1 + 2 * u);
        out[1] = u * v * v * length;
        out[2] = u * u * (1 + 2 * v);
        out[3] = -u * u * v * length;
        out[4] = -6 * u * v / length;
        out[5] = v * (v - 2 * u);
        out[6] = 6 * u * v / length;
        out[7] = u * (u - 2 * v);
    }
}
