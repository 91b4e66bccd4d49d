package trimwright.wing;

/**
 * Velocity that each strip's horseshoe vortex of unit circulation, with its image in the sea, makes at each strip, for one
 * trailing direction: components forward and to starboard, row by the strip that feels it.
 *
 * <p>Horseshoe law as in Phillips and Snyder; the bound line is straight, so it does not act on itself. The image is the
 * mirrored horseshoe with its nodes in reverse order.
 */
final class Influence {
    final double[] x;
    final double[] y;

    private Influence(int strips) {
        x = new double[strips * strips];
        y = new double[strips * strips];
    }

    /** For a placed wing and a trailing direction of unit length, parallel to the sea. */
    static Influence of(PlacedWing placed, double ux, double uy, double uz) {
        Wing wing = placed.wing();
        int n = wing.strips();
        Influence influence = new Influence(n);
        double[] leg = wing.legs();
        // A node above the strip lies at negative z from it, seen from the node at positive z; below, the reverse.
        double above = 1 / (1 - uz);
        double below = 1 / (1 + uz);
        double[] legX = new double[n + 1];
        double[] legY = new double[n + 1];
        for (int i = 0; i < n; i++) {
            int row = i * (n + 1);
            for (int k = 0; k <= n; k++) {
                double f = leg[row + k] * (k > i ? above : below);
                legX[k] = uy * f;
                legY[k] = -ux * f;
            }
            if (placed.hasSea()) {
                addImageLegs(placed, row, n, ux, uy, uz, legX, legY);
            }
            int at = i * n;
            for (int j = 0; j < n; j++) {
                influence.x[at + j] = legX[j + 1] - legX[j];
                influence.y[at + j] = legY[j + 1] - legY[j];
            }
        }
        if (placed.hasSea()) {
            double[] bound = placed.imageBound();
            for (int k = 0; k < bound.length; k++) {
                influence.x[k] += bound[k];
            }
        }
        return influence;
    }

    private static void addImageLegs(
            PlacedWing placed, int row, int n, double ux, double uy, double uz, double[] legX, double[] legY) {
        double[] ry = placed.imageY();
        double[] rz = placed.imageZ();
        double[] r = placed.imageDistance();
        for (int k = 0; k <= n; k++) {
            double y = ry[row + k];
            double z = rz[row + k];
            double d = r[row + k];
            double f = 1 / (4 * Math.PI * d * (d - uy * y - uz * z));
            // Reverse order of nodes: the image leg counts with the opposite sign.
            legX[k] -= (uy * z - uz * y) * f;
            legY[k] += ux * z * f;
        }
    }
}
