package trimwright.section;

/**
 * Several quantities over three coordinates, between nodes as products of cubic Hermite polynomials: value and first
 * derivatives are continuous everywhere, and exact derivatives of one another. Held constant beyond its ends, where slopes are
 * zero.
 */
final class HermiteTable {
    /** Value, its slopes by x, y, z, xy, xz, yz, xyz. */
    private static final int PER_NODE = 8;

    private final TableAxis x;
    private final TableAxis y;
    private final TableAxis z;
    private final int quantities;
    private final double[] node;

    /** @param values by quantity, x, y, z */
    HermiteTable(double[] x, double[] y, double[] z, double[][][][] values) {
        this.x = new TableAxis(x);
        this.y = new TableAxis(y);
        this.z = new TableAxis(z);
        quantities = values.length;
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
        return ((i * y.nodes() + j) * z.nodes() + k) * quantities * PER_NODE;
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
        final double[] wx = new double[PER_NODE];
        final double[] wy = new double[PER_NODE];
        final double[] wz = new double[PER_NODE];
        final double[] value = new double[4];
        int i;
        int j;
        int k;

        /** Half the range between both stalls, and its middle, with derivatives (rad). */
        final double[] half = new double[4];

        final double[] middle = new double[4];

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
        y.weights(spot.j, atY, spot.wy);
        z.weights(spot.k, atZ, spot.wz);
    }

    /** Sets a workspace's place along x. */
    void placeX(double atX, Spot spot) {
        spot.i = x.interval(atX);
        x.weights(spot.i, atX, spot.wx);
    }

    /** A quantity at the place of a workspace: value, derivatives by x, y, z. */
    void at(int quantity, Spot spot, double[] out) {
        double[] wx = spot.wx;
        double[] wy = spot.wy;
        double[] wz = spot.wz;
        double value = 0;
        double byX = 0;
        double byY = 0;
        double byZ = 0;
        int stepX = y.nodes() * z.nodes() * quantities * PER_NODE;
        for (int k = 0; k < 2; k++) {
            // Value and z slope at this end of the interval in z, each with its derivatives by x and y.
            double v = 0;
            double vx = 0;
            double vy = 0;
            double s = 0;
            double sx = 0;
            double sy = 0;
            for (int j = 0; j < 2; j++) {
                int a = place(spot.i, spot.j + j, spot.k + k) + quantity * PER_NODE;
                int b = a + stepX;
                double y0 = wy[2 * j];
                double y1 = wy[2 * j + 1];
                double y4 = wy[4 + 2 * j];
                double y5 = wy[5 + 2 * j];
                double p = wx[0] * node[a] + wx[1] * node[a + 1] + wx[2] * node[b] + wx[3] * node[b + 1];
                double px = wx[4] * node[a] + wx[5] * node[a + 1] + wx[6] * node[b] + wx[7] * node[b + 1];
                double q = wx[0] * node[a + 2] + wx[1] * node[a + 4] + wx[2] * node[b + 2] + wx[3] * node[b + 4];
                double qx = wx[4] * node[a + 2] + wx[5] * node[a + 4] + wx[6] * node[b + 2] + wx[7] * node[b + 4];
                v += y0 * p + y1 * q;
                vx += y0 * px + y1 * qx;
                vy += y4 * p + y5 * q;
                double r = wx[0] * node[a + 3] + wx[1] * node[a + 5] + wx[2] * node[b + 3] + wx[3] * node[b + 5];
                double rx = wx[4] * node[a + 3] + wx[5] * node[a + 5] + wx[6] * node[b + 3] + wx[7] * node[b + 5];
                double t = wx[0] * node[a + 6] + wx[1] * node[a + 7] + wx[2] * node[b + 6] + wx[3] * node[b + 7];
                double tx = wx[4] * node[a + 6] + wx[5] * node[a + 7] + wx[6] * node[b + 6] + wx[7] * node[b + 7];
                s += y0 * r + y1 * t;
                sx += y0 * rx + y1 * tx;
                sy += y4 * r + y5 * t;
            }
            value += wz[2 * k] * v + wz[2 * k + 1] * s;
            byX += wz[2 * k] * vx + wz[2 * k + 1] * sx;
            byY += wz[2 * k] * vy + wz[2 * k + 1] * sy;
            byZ += wz[4 + 2 * k] * v + wz[5 + 2 * k] * s;
        }
        out[0] = value;
        out[1] = byX;
        out[2] = byY;
        out[3] = byZ;
    }
}
