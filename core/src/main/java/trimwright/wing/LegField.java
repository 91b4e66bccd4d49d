package trimwright.wing;

/**
 * Velocity that trailing lines from a row of nodes, with their images in the sea, make at a row of points. Nodes and points
 * lie in one plane across the boat. Unit strength; the image counts with the opposite sign, as its nodes run in reverse.
 */
final class LegField {
    private final double heel;
    private final double[] height;

    /** Change of a node's height per rad of heel about the step. */
    private final double[] rise;

    private final double[][] realY;
    private final double[][] realZ;
    private final double[][] imageY;
    private final double[][] imageZ;

    /**
     * @param nodeY nodes to starboard of the step (m)
     * @param nodeZ nodes below the step (m)
     * @param pointY points to starboard of the step (m)
     * @param pointZ points below the step (m)
     */
    LegField(PlacedWing placed, double[] nodeY, double[] nodeZ, double[] pointY, double[] pointZ) {
        heel = placed.heel();
        double sin = StrictMath.sin(heel);
        double cos = StrictMath.cos(heel);
        int nodes = nodeY.length;
        int points = pointY.length;
        height = new double[nodes];
        rise = new double[nodes];
        realY = new double[nodes][points];
        realZ = new double[nodes][points];
        imageY = new double[placed.hasSea() ? nodes : 0][points];
        imageZ = new double[imageY.length][points];
        for (int k = 0; k < nodes; k++) {
            height[k] = placed.footHeight() - nodeY[k] * sin - nodeZ[k] * cos;
            rise[k] = nodeZ[k] * sin - nodeY[k] * cos;
            for (int i = 0; i < points; i++) {
                realY[k][i] = pointY[i] - nodeY[k];
                realZ[k][i] = pointZ[i] - nodeZ[k];
                if (placed.hasSea()) {
                    imageY[k][i] = realY[k][i] - 2 * height[k] * sin;
                    imageZ[k][i] = realZ[k][i] - 2 * height[k] * cos;
                }
            }
        }
    }

    int nodes() {
        return realY.length;
    }

    /** Adds the velocity of a node's line of a strength. */
    void add(int node, double strength, double[] u, double[] toX, double[] toY, double[] toZ) {
        addLine(realY[node], realZ[node], strength, u, toX, toY, toZ);
        if (imageY.length > 0) {
            addLine(imageY[node], imageZ[node], -strength, u, toX, toY, toZ);
        }
    }

    private static void addLine(
            double[] ry, double[] rz, double strength, double[] u, double[] toX, double[] toY, double[] toZ) {
        double share = strength / (4 * Math.PI);
        double ux = u[0];
        double uy = u[1];
        double uz = u[2];
        for (int i = 0; i < ry.length; i++) {
            double y = ry[i];
            double z = rz[i];
            double r = Math.sqrt(y * y + z * z);
            double f = share / (r * (r - uy * y - uz * z));
            toX[i] += (uy * z - uz * y) * f;
            toY[i] -= ux * z * f;
            toZ[i] += ux * y * f;
        }
    }

    /** Adds the change of that velocity as the wakes turn by du, the wing heels and its foot rises. */
    void addChange(
            int node,
            double strength,
            double[] u,
            double[] du,
            double dHeel,
            double dFoot,
            double[] toX,
            double[] toY,
            double[] toZ) {
        addLineChange(realY[node], realZ[node], 0, 0, strength, u, du, toX, toY, toZ);
        if (imageY.length > 0) {
            double sin = StrictMath.sin(heel);
            double cos = StrictMath.cos(heel);
            double rising = dFoot + rise[node] * dHeel;
            double dy = -2 * (rising * sin + height[node] * cos * dHeel);
            double dz = -2 * (rising * cos - height[node] * sin * dHeel);
            addLineChange(imageY[node], imageZ[node], dy, dz, -strength, u, du, toX, toY, toZ);
        }
    }

    private static void addLineChange(
            double[] ry,
            double[] rz,
            double dy,
            double dz,
            double strength,
            double[] u,
            double[] du,
            double[] toX,
            double[] toY,
            double[] toZ) {
        double share = strength / (4 * Math.PI);
        for (int i = 0; i < ry.length; i++) {
            double y = ry[i];
            double z = rz[i];
            double r = Math.sqrt(y * y + z * z);
            double clear = 1 / (r - u[1] * y - u[2] * z);
            double f = share * clear / r;
            double dr = (y * dy + z * dz) / r;
            double df = -f * (dr / r + (dr - du[1] * y - u[1] * dy - du[2] * z - u[2] * dz) * clear);
            toX[i] += (du[1] * z + u[1] * dz - du[2] * y - u[2] * dy) * f + (u[1] * z - u[2] * y) * df;
            toY[i] -= (du[0] * z + u[0] * dz) * f + u[0] * z * df;
            toZ[i] += (du[0] * y + u[0] * dy) * f + u[0] * y * df;
        }
    }
}
