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

    /** Where the ends of lift are in a workspace. */
    static final int LIFT = 2 * PER_END;

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

        /** Both ends of an interval along x, see {@link #end}: of any quantity, then those of lift. */
        final double[] ends = new double[4 * PER_END];

        /** Interval along x that the ends of lift are of, -1 for none: they stay while only the angle of attack changes. */
        int liftInterval = -1;

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

        /** Derivatives of the place between both stalls by angle of attack, flap angle, log Reynolds number. */
        double sA;

        double sF;
        double sR;
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
        fillEnds(quantity, spot, 0);
        between(spot, 0, out);
    }

    /** Puts both ends of the interval along x that a workspace's place is in at a place among its ends. */
    void fillEnds(int quantity, Spot spot, int at) {
        end(quantity, spot.i, spot, at);
        end(quantity, spot.i + 1, spot, at + PER_END);
    }

    /** A quantity at a node along x and a workspace's place along y and z: value, slopes by x, y, xy, z, xz. */
    void end(int quantity, int i, Spot spot, int at) {
        double[] w = spot.weights;
        double[] out = spot.ends;
        double value = 0;
        double byX = 0;
        double byY = 0;
        double byXy = 0;
        double byZ = 0;
        double byXz = 0;
        int corner = place(i, spot.j, spot.k) + quantity * PER_NODE;
        for (int k = 0; k < 2; k++) {
            // Value and z slope at this end of the interval in z, each with its derivatives by x, y and both.
            double v = 0;
            double vx = 0;
            double vy = 0;
            double vxy = 0;
            double s = 0;
            double sx = 0;
            double sy = 0;
            double sxy = 0;
            for (int j = 0; j < 2; j++) {
                int a = corner + j * stepY + k * stepZ;
                double y0 = w[ALONG_Y + 2 * j];
                double y1 = w[ALONG_Y + 1 + 2 * j];
                double y4 = w[ALONG_Y + 4 + 2 * j];
                double y5 = w[ALONG_Y + 5 + 2 * j];
                v += y0 * node[a] + y1 * node[a + 2];
                vx += y0 * node[a + 1] + y1 * node[a + 4];
                vy += y4 * node[a] + y5 * node[a + 2];
                vxy += y4 * node[a + 1] + y5 * node[a + 4];
                s += y0 * node[a + 3] + y1 * node[a + 6];
                sx += y0 * node[a + 5] + y1 * node[a + 7];
                sy += y4 * node[a + 3] + y5 * node[a + 6];
                sxy += y4 * node[a + 5] + y5 * node[a + 7];
            }
            double z0 = w[ALONG_Z + 2 * k];
            double z1 = w[ALONG_Z + 1 + 2 * k];
            double z4 = w[ALONG_Z + 4 + 2 * k];
            double z5 = w[ALONG_Z + 5 + 2 * k];
            value += z0 * v + z1 * s;
            byX += z0 * vx + z1 * sx;
            byY += z0 * vy + z1 * sy;
            byXy += z0 * vxy + z1 * sxy;
            byZ += z4 * v + z5 * s;
            byXz += z4 * vx + z5 * sx;
        }
        out[at] = value;
        out[at + 1] = byX;
        out[at + 2] = byY;
        out[at + 3] = byXy;
        out[at + 4] = byZ;
        out[at + 5] = byXz;
    }

    /** A quantity between two ends along x, which are at a place among a workspace's: value, derivatives by x, y, z. */
    static void between(Spot spot, int at, double[] out) {
        double[] w = spot.weights;
        double[] ends = spot.ends;
        int to = at + PER_END;
        out[0] = w[0] * ends[at] + w[1] * ends[at + 1] + w[2] * ends[to] + w[3] * ends[to + 1];
        out[1] = w[4] * ends[at] + w[5] * ends[at + 1] + w[6] * ends[to] + w[7] * ends[to + 1];
        out[2] = w[0] * ends[at + 2] + w[1] * ends[at + 3] + w[2] * ends[to + 2] + w[3] * ends[to + 3];
        out[3] = w[0] * ends[at + 4] + w[1] * ends[at + 5] + w[2] * ends[to + 4] + w[3] * ends[to + 5];
    }
}
