package trimwright.section;

/**
 * Several quantities over three coordinates, between nodes as products of cubic Hermite polynomials: value and first
 * derivatives are continuous everywhere, and exact derivatives of one another. Held constant beyond its ends, where slopes are
 * zero.
 */
final class HermiteTable {
    /** Value, its slopes by x, y, z, xy, xz, yz, xyz. */
    private static final int PER_NODE = 8;

    /** Value at an end of an interval along x, its slopes by x, y, xy, z, xz. */
    private static final int PER_END = 6;

    private static final int ALONG_Y = TableAxis.WEIGHTS;
    private static final int ALONG_Z = 2 * TableAxis.WEIGHTS;

    private final TableAxis x;
    private final TableAxis y;
    private final TableAxis z;
    private final int quantities;

    /** From a node to the next along x, y, z. */
    private final int stepX;

    private final int stepY;
    private final int stepZ;
    private final double[] node;

    /** @param values by quantity, x, y, z */
    HermiteTable(double[] x, double[] y, double[] z, double[][][][] values) {
        this.x = new TableAxis(x);
        this.y = new TableAxis(y);
        this.z = new TableAxis(z);
        quantities = values.length;
        stepZ = quantities * PER_NODE;
        stepY = z.length * stepZ;
        stepX = y.length * stepY;
        node = new double[x.length * y.length * z.length * quantities * PER_NODE];
        for (int q = 0; q < quantities; q++) {
            double[][][] v = values[q];
            double[][][] byX = alongX(x, v);
            double[][][] byY = alongY(y, v);
            double[][][] byXy = alongY(y, byX);
            store(q, v, 0);
            store(q, byX, 1);
            store(q, byY, 2);
            store(q, alongZ(z, v), 3);
            store(q, byXy, 4);
            store(q, alongZ(z, byX), 5);
            store(q, alongZ(z, byY), 6);
            store(q, alongZ(z, byXy), 7);
        }
    }

    private void store(int quantity, double[][][] v, int kind) {
        for (int i = 0; i < v.length; i++) {
            for (int j = 0; j < v[i].length; j++) {
                for (int k = 0; k < v[i][j].length; k++) {
                    node[place(i, j, k) + quantity * PER_NODE + kind] = v[i][j][k];
                }
            }
        }
    }

    private int place(int i, int j, int k) {
        return i * stepX + j * stepY + k * stepZ;
    }

    private static double[][][] alongX(double[] x, double[][][] v) {
        double[][][] out = new double[v.length][v[0].length][v[0][0].length];
        double[] row = new double[v.length];
        for (int j = 0; j < v[0].length; j++) {
            for (int k = 0; k < v[0][0].length; k++) {
                for (int i = 0; i < v.length; i++) {
                    row[i] = v[i][j][k];
                }
                double[] slope = NodeSlopes.of(x, row);
                for (int i = 0; i < v.length; i++) {
                    out[i][j][k] = slope[i];
                }
            }
        }
        return out;
    }

    private static double[][][] alongY(double[] y, double[][][] v) {
        double[][][] out = new double[v.length][v[0].length][v[0][0].length];
        double[] row = new double[v[0].length];
        for (int i = 0; i < v.length; i++) {
            for (int k = 0; k < v[0][0].length; k++) {
                for (int j = 0; j < v[0].length; j++) {
                    row[j] = v[i][j][k];
                }
                double[] slope = NodeSlopes.of(y, row);
                for (int j = 0; j < v[0].length; j++) {
                    out[i][j][k] = slope[j];
                }
            }
        }
        return out;
    }

    private static double[][][] alongZ(double[] z, double[][][] v) {
        double[][][] out = new double[v.length][v[0].length][];
        for (int i = 0; i < v.length; i++) {
            for (int j = 0; j < v[0].length; j++) {
                out[i][j] = NodeSlopes.of(z, v[i][j]);
            }
        }
        return out;
    }

    int quantities() {
        return quantities;
    }

    TableAxis x() {
        return x;
    }

    TableAxis y() {
        return y;
    }

    TableAxis z() {
        return z;
    }

    /** Workspace for {@link #at}, and what a section keeps in it between its three steps. */
    static final class Spot {
        /** Along x, y, z: {@link TableAxis#weights}. */
        final double[] weights = new double[3 * TableAxis.WEIGHTS];

        /** Both ends of an interval along x, see {@link #end}: of one quantity after the other. */
        final double[] ends = new double[2 * PER_END];

        /** Interval along x that the rows below are of, -1 for none: they stay while only the angle of attack changes. */
        int rowInterval = -1;

        /** Value and slope along x of one quantity at both ends of that interval. */
        double begin;

        double beginX;
        double end;
        double endX;

        final double[] value = new double[4];
        int i;
        int j;
        int k;

        /** Half the range between both stalls, and its middle, with derivatives by flap angle and log Reynolds number (rad). */
        double half;

        double halfF;
        double halfR;
        double middle;
        double middleF;
        double middleR;

        /** 1, or -1 where the state is the mirror's. */
        double side;

        /** Place between both stalls (-1 to 1), and its derivative by angle of attack. */
        double s;

        double sA;

        /** Derivative of the size of the angle from the middle by that angle. */
        double sizeX;
    }

    /** Sets a workspace's place along y and z, which several tables over the same nodes may share. */
    void placeYz(double atY, double atZ, Spot spot) {
        spot.j = y.interval(atY);
        spot.k = z.interval(atZ);
        y.weights(spot.j, atY, spot.weights, ALONG_Y);
        z.weights(spot.k, atZ, spot.weights, ALONG_Z);
    }

    /** Sets a workspace's place along x. */
    void placeX(double atX, Spot spot) {
        spot.i = x.interval(atX, spot.i);
        x.weights(spot.i, atX, spot.weights, 0);
    }

    /** A quantity at the place of a workspace: value, derivatives by x, y, z. */
    void at(int quantity, Spot spot, double[] out) {
        double[] w = spot.weights;
        double[] ends = spot.ends;
        end(quantity, spot.i, spot, 0);
        end(quantity, spot.i + 1, spot, PER_END);
        int to = PER_END;
        out[0] = w[0] * ends[0] + w[1] * ends[1] + w[2] * ends[to] + w[3] * ends[to + 1];
        out[1] = w[4] * ends[0] + w[5] * ends[1] + w[6] * ends[to] + w[7] * ends[to + 1];
        out[2] = w[0] * ends[2] + w[1] * ends[3] + w[2] * ends[to + 2] + w[3] * ends[to + 3];
        out[3] = w[0] * ends[4] + w[1] * ends[5] + w[2] * ends[to + 4] + w[3] * ends[to + 5];
    }

    /** Value and derivative by x alone, of one and the same quantity as long as y and z stay: half the work, or next to none. */
    void along(int quantity, Spot spot, double[] out) {
        if (spot.rowInterval != spot.i) {
            int corner = place(spot.i, spot.j, spot.k) + quantity * PER_NODE;
            double[] w = spot.weights;
            spot.begin = value(corner, 0, 2, 3, 6, w);
            spot.beginX = value(corner, 1, 4, 5, 7, w);
            spot.end = value(corner + stepX, 0, 2, 3, 6, w);
            spot.endX = value(corner + stepX, 1, 4, 5, 7, w);
            spot.rowInterval = spot.i;
        }
        double[] w = spot.weights;
        out[0] = w[0] * spot.begin + w[1] * spot.beginX + w[2] * spot.end + w[3] * spot.endX;
        out[1] = w[4] * spot.begin + w[5] * spot.beginX + w[6] * spot.end + w[7] * spot.endX;
    }

    /** A quantity at the first node along x and a workspace's place along y and z: value, slopes by y and z. */
    void across(int quantity, Spot spot, double[] out) {
        int corner = place(0, spot.j, spot.k) + quantity * PER_NODE;
        double[] w = spot.weights;
        int next = corner + stepZ;
        double v0 = mix(corner, 0, 2, w, ALONG_Y);
        double s0 = mix(corner, 3, 6, w, ALONG_Y);
        double v1 = mix(next, 0, 2, w, ALONG_Y);
        double s1 = mix(next, 3, 6, w, ALONG_Y);
        out[0] = w[ALONG_Z] * v0 + w[ALONG_Z + 1] * s0 + (w[ALONG_Z + 2] * v1 + w[ALONG_Z + 3] * s1);
        out[1] = w[ALONG_Z] * mix(corner, 0, 2, w, ALONG_Y + 4)
                + w[ALONG_Z + 1] * mix(corner, 3, 6, w, ALONG_Y + 4)
                + (w[ALONG_Z + 2] * mix(next, 0, 2, w, ALONG_Y + 4) + w[ALONG_Z + 3] * mix(next, 3, 6, w, ALONG_Y + 4));
        out[2] = w[ALONG_Z + 4] * v0 + w[ALONG_Z + 5] * s0 + (w[ALONG_Z + 6] * v1 + w[ALONG_Z + 7] * s1);
    }

    /** What a row along x has at a node: of the four kinds of slope there, plain, by y, by z, by both. */
    private double value(int corner, int plain, int byY, int byZ, int byYz, double[] w) {
        int next = corner + stepZ;
        return w[ALONG_Z] * mix(corner, plain, byY, w, ALONG_Y)
                + w[ALONG_Z + 1] * mix(corner, byZ, byYz, w, ALONG_Y)
                + (w[ALONG_Z + 2] * mix(next, plain, byY, w, ALONG_Y)
                        + w[ALONG_Z + 3] * mix(next, byZ, byYz, w, ALONG_Y));
    }

    /** Between two nodes along y, from the kinds of slope there, plain and by y, with weights from a place on. */
    private double mix(int corner, int plain, int byY, double[] w, int from) {
        int next = corner + stepY;
        return w[from] * node[corner + plain]
                + w[from + 1] * node[corner + byY]
                + (w[from + 2] * node[next + plain] + w[from + 3] * node[next + byY]);
    }

    /** A quantity at a node along x and a workspace's place along y and z: value, slopes by x, y, xy, z, xz. */
    private void end(int quantity, int i, Spot spot, int at) {
        double[] w = spot.weights;
        double[] out = spot.ends;
        int corner = place(i, spot.j, spot.k) + quantity * PER_NODE;
        int next = corner + stepZ;
        double z0 = w[ALONG_Z];
        double z1 = w[ALONG_Z + 1];
        double z2 = w[ALONG_Z + 2];
        double z3 = w[ALONG_Z + 3];
        double v0 = mix(corner, 0, 2, w, ALONG_Y);
        double s0 = mix(corner, 3, 6, w, ALONG_Y);
        double v1 = mix(next, 0, 2, w, ALONG_Y);
        double s1 = mix(next, 3, 6, w, ALONG_Y);
        double vx0 = mix(corner, 1, 4, w, ALONG_Y);
        double sx0 = mix(corner, 5, 7, w, ALONG_Y);
        double vx1 = mix(next, 1, 4, w, ALONG_Y);
        double sx1 = mix(next, 5, 7, w, ALONG_Y);
        out[at] = z0 * v0 + z1 * s0 + (z2 * v1 + z3 * s1);
        out[at + 1] = z0 * vx0 + z1 * sx0 + (z2 * vx1 + z3 * sx1);
        out[at + 2] = z0 * mix(corner, 0, 2, w, ALONG_Y + 4)
                + z1 * mix(corner, 3, 6, w, ALONG_Y + 4)
                + (z2 * mix(next, 0, 2, w, ALONG_Y + 4) + z3 * mix(next, 3, 6, w, ALONG_Y + 4));
        out[at + 3] = z0 * mix(corner, 1, 4, w, ALONG_Y + 4)
                + z1 * mix(corner, 5, 7, w, ALONG_Y + 4)
                + (z2 * mix(next, 1, 4, w, ALONG_Y + 4) + z3 * mix(next, 5, 7, w, ALONG_Y + 4));
        double z4 = w[ALONG_Z + 4];
        double z5 = w[ALONG_Z + 5];
        double z6 = w[ALONG_Z + 6];
        double z7 = w[ALONG_Z + 7];
        out[at + 4] = z4 * v0 + z5 * s0 + (z6 * v1 + z7 * s1);
        out[at + 5] = z4 * vx0 + z5 * sx0 + (z6 * vx1 + z7 * sx1);
    }
}
