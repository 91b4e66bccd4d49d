package trimwright.wing;

import org.jspecify.annotations.Nullable;

/**
 * Velocity that each strip's horseshoe vortex of unit circulation, with its image in the sea, makes at each strip, for one
 * trailing direction: components forward and to starboard, {@code [strip that makes it][strip that feels it]}.
 *
 * <p>Horseshoe law as in Phillips and Snyder; the bound line is straight, so it does not act on itself. The image is the
 * mirrored horseshoe with its nodes in reverse order.
 */
final class Influence {
    final PlacedWing placed;
    final double ux;
    final double uy;
    final double uz;
    final double[][] x;
    final double[][] y;

    /** 1/(r - u.r) of each node's image, seen from each strip; none in free air. */
    private final double[][] clear;

    private final @Nullable PlateFlow plate;

    private Influence(PlacedWing placed, double[] trail) {
        this.placed = placed;
        ux = trail[0];
        uy = trail[1];
        uz = trail[2];
        PlacedPlate below = placed.plate();
        plate = below == null ? null : PlateFlow.of(below, trail.clone());
        int n = placed.wing().strips();
        x = Rows.of(n, n);
        y = Rows.of(n, n);
        clear = Rows.of(placed.hasSea() ? n + 1 : 0, n);
    }

    /** For a placed wing and a trailing direction of unit length, parallel to the sea. */
    static Influence of(PlacedWing placed, double[] trail) {
        Influence influence = new Influence(placed, trail);
        influence.fill();
        return influence;
    }

    /** What the plate under the foot does, or null. */
    @Nullable
    PlateFlow plate() {
        return plate;
    }

    boolean serves(PlacedWing other, double[] trail) {
        return placed == other && ux == trail[0] && uy == trail[1] && uz == trail[2];
    }

    /** Adds the velocities that circulations make to those of the air. */
    void add(double[] gamma, double[] vx, double[] vy) {
        add(x, gamma, vx);
        add(y, gamma, vy);
    }

    // Four at a time: one pass along memory instead of four.
    private static void add(double[][] from, double[] gamma, double[] to) {
        int j = 0;
        for (; j + 4 <= gamma.length; j += 4) {
            double[] f0 = from[j];
            double[] f1 = from[j + 1];
            double[] f2 = from[j + 2];
            double[] f3 = from[j + 3];
            double g0 = gamma[j];
            double g1 = gamma[j + 1];
            double g2 = gamma[j + 2];
            double g3 = gamma[j + 3];
            for (int i = 0; i < to.length; i++) {
                to[i] = to[i] + f0[i] * g0 + f1[i] * g1 + f2[i] * g2 + f3[i] * g3;
            }
        }
        for (; j < gamma.length; j++) {
            double[] f = from[j];
            double g = gamma[j];
            for (int i = 0; i < to.length; i++) {
                to[i] += f[i] * g;
            }
        }
    }

    private void fill() {
        int n = x.length;
        double[] lowX = new double[n];
        double[] lowY = new double[n];
        double[] highX = new double[n];
        double[] highY = new double[n];
        leg(0, lowX, lowY);
        for (int j = 0; j < n; j++) {
            leg(j + 1, highX, highY);
            difference(highX, lowX, x[j]);
            difference(highY, lowY, y[j]);
            double[] t = lowX;
            lowX = highX;
            highX = t;
            t = lowY;
            lowY = highY;
            highY = t;
        }
        if (plate != null) {
            plate.addTo(x, y);
        }
    }

    private static void difference(double[] high, double[] low, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] = high[i] - low[i];
        }
    }

    /** Velocity at each strip of the line that trails from a node with unit strength, and of its image, its bound part too. */
    private void leg(int k, double[] toX, double[] toY) {
        double[] leg = placed.wing().legs(k);
        int n = leg.length;
        // A node above the strip lies at negative z from it, seen from the node at positive z; below, the reverse.
        double above = 1 / (1 - uz);
        double below = 1 / (1 + uz);
        scale(leg, above, 0, Math.min(k, n), toX, toY);
        scale(leg, below, Math.min(k, n), n, toX, toY);
        if (placed.hasSea()) {
            imageLeg(k, toX, toY);
        }
    }

    private void scale(double[] leg, double factor, int begin, int end, double[] toX, double[] toY) {
        double fx = uy;
        double fy = -ux;
        for (int i = begin; i < end; i++) {
            double f = leg[i] * factor;
            toX[i] = fx * f;
            toY[i] = fy * f;
        }
    }

    private void imageLeg(int k, double[] toX, double[] toY) {
        double[] height = placed.wing().stripHeights();
        double along = placed.imageAlong(k);
        double[] near = placed.imageNearness(k);
        double[] clear = this.clear[k];
        fillClearance(k, clear);
        // Reverse order of nodes: the image leg counts with the opposite sign.
        double back = uy / (4 * Math.PI);
        double side = uz * placed.imageY(k) / (4 * Math.PI) - back * along;
        double across = ux / (4 * Math.PI);
        double[] bound = placed.imageBound(k);
        double[] apart = placed.lineDistance();
        double line = 1 / (4 * Math.PI);
        for (int i = 0; i < toX.length; i++) {
            toX[i] += near[i] * ((side + back * height[i]) * clear[i] - line * apart[i] * bound[i]);
        }
        for (int i = 0; i < toY.length; i++) {
            toY[i] += across * (along - height[i]) * near[i] * clear[i];
        }
    }

    /** 1/(r - u.r) of a node's image, seen from each strip; not to be changed. */
    double[] imageClearance(int k) {
        return clear[k];
    }

    private void fillClearance(int k, double[] to) {
        double[] height = placed.wing().stripHeights();
        double along = placed.imageAlong(k);
        double[] near = placed.imageNearness(k);
        double aside = placed.imageY(k);
        double aside2 = aside * aside;
        double across = uy * aside;
        double down = uz;
        for (int i = 0; i < to.length; i++) {
            double z = along - height[i];
            to[i] = 1 / ((aside2 + z * z) * near[i] - across - down * z);
        }
    }
}
