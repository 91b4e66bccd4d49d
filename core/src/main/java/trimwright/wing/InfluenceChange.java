package trimwright.wing;

/**
 * First-order change of the velocities that held circulations make at the strips, when the wakes turn or the wing moves
 * over its image: the derivative of {@link Influence} term by term.
 */
final class InfluenceChange {
    private final Influence influence;
    private final PlacedWing placed;
    private final double dux;
    private final double duy;
    private final double duz;
    private final double heel;
    private final double foot;
    private final double sin;
    private final double cos;
    private final double[] x;
    private final double[] y;
    private final double[] weaker;

    /**
     * @param trail change of the trailing direction, across it
     * @param heel change of signed roll (rad)
     * @param foot change of the foot's height (m)
     */
    private InfluenceChange(Influence influence, double[] trail, double heel, double foot) {
        this.influence = influence;
        placed = influence.placed;
        dux = trail[0];
        duy = trail[1];
        duz = trail[2];
        this.heel = heel;
        this.foot = foot;
        sin = StrictMath.sin(placed.heel());
        cos = StrictMath.cos(placed.heel());
        x = new double[placed.wing().strips()];
        y = new double[x.length];
        weaker = new double[x.length];
    }

    /** The wakes turn with the air about the sea's upright: per rad. */
    static InfluenceChange byAirAngle(Influence influence) {
        double downY = StrictMath.sin(influence.placed.heel());
        double downZ = StrictMath.cos(influence.placed.heel());
        double[] trail = {downY * influence.uz - downZ * influence.uy, downZ * influence.ux, -downY * influence.ux};
        return new InfluenceChange(influence, trail, 0, 0);
    }

    /** The wing tilts over the sea, the wakes stay level: per rad of signed roll. */
    static InfluenceChange byHeel(Influence influence) {
        return new InfluenceChange(influence, new double[] {0, influence.uz, -influence.uy}, 1, 0);
    }

    /** The foot rises: per m. */
    static InfluenceChange byFootHeight(Influence influence) {
        return new InfluenceChange(influence, new double[3], 0, 1);
    }

    /** Computes all three at once, since they share what is dear. */
    static void fill(double[] gamma, InfluenceChange... changes) {
        Influence influence = changes[0].influence;
        PlacedWing placed = influence.placed;
        int n = gamma.length;
        double[] above = new double[n];
        double[] below = new double[n];
        ImageLeg image = new ImageLeg(influence);
        for (int k = 0; k <= n; k++) {
            double strength = (k > 0 ? gamma[k - 1] : 0) - (k < n ? gamma[k] : 0);
            add(placed.wing().legs(k), strength, 0, Math.min(k, n), above);
            add(placed.wing().legs(k), strength, Math.min(k, n), n, below);
            if (placed.hasSea()) {
                image.at(k, strength);
                for (InfluenceChange change : changes) {
                    change.addImageLeg(k, image);
                }
            }
        }
        PlateFlow plate = influence.plate();
        for (InfluenceChange change : changes) {
            change.addLegs(above, below);
            if (placed.hasSea()) {
                change.addLineDistance(image);
            }
            if (plate != null) {
                double[] trail = {change.dux, change.duy, change.duz};
                plate.addChange(gamma, trail, change.heel, change.foot, change.x, change.y);
            }
        }
    }

    /** Adds so many times the change of velocity, forward and to starboard. */
    void addTo(double times, double[] vx, double[] vy) {
        for (int i = 0; i < x.length; i++) {
            vx[i] += times * x[i];
        }
        for (int i = 0; i < y.length; i++) {
            vy[i] += times * y[i];
        }
    }

    /**
     * The wing's own wakes. As {@link Influence} has them: a node above the strip trails at negative z from it, one below
     * at positive z.
     */
    private void addLegs(double[] above, double[] below) {
        double up = 1 / (1 - influence.uz);
        double down = 1 / (1 + influence.uz);
        double upX = up * (duy + influence.uy * duz * up);
        double downX = down * (duy - influence.uy * duz * down);
        double upY = up * (dux + influence.ux * duz * up);
        double downY = down * (dux - influence.ux * duz * down);
        for (int i = 0; i < x.length; i++) {
            x[i] += upX * above[i] + downX * below[i];
            y[i] -= upY * above[i] + downY * below[i];
        }
    }

    private static void add(double[] leg, double factor, int begin, int end, double[] to) {
        for (int i = begin; i < end; i++) {
            to[i] += leg[i] * factor;
        }
    }

    /** The image of a node: its wake, and the bound line that goes on from it. */
    private void addImageLeg(int k, ImageLeg image) {
        boolean moves = heel != 0 || foot != 0;
        if (moves) {
            addMoved(k, image);
        } else {
            addTurned(k, image);
        }
    }

    /** Only the wake turns. */
    private void addTurned(int k, ImageLeg image) {
        double along = placed.imageAlong(k);
        double[] height = placed.wing().stripHeights();
        double[] force = image.force;
        double[] dense = image.dense;
        double aside = placed.imageY(k);
        double uy = influence.uy;
        double over = influence.uz * aside;
        double ux = influence.ux;
        double gap = duy * aside;
        double lean = duz;
        double stillX = duz * aside;
        double turnX = duy;
        double turnY = dux;
        double[] toX = x;
        for (int i = 0; i < toX.length; i++) {
            double z = along - height[i];
            toX[i] += (uy * z - over) * -(gap + lean * z) * dense[i] - force[i] * (turnX * z - stillX);
        }
        double[] toY = y;
        for (int i = 0; i < toY.length; i++) {
            double z = along - height[i];
            toY[i] += z * (force[i] * turnY + ux * (gap + lean * z) * dense[i]);
        }
    }

    /** The node's image moves against the strips, and the wake may turn in their axes. */
    private void addMoved(int k, ImageLeg image) {
        double along = placed.imageAlong(k);
        double[] height = placed.wing().stripHeights();
        double aside = placed.imageY(k);
        double dy = dy(k);
        double dz = dz(k);
        double ux = influence.ux;
        double uy = influence.uy;
        double uz = influence.uz;
        double over = uz * aside;
        double gap = duy * aside + uy * dy + uz * dz;
        double lean = duz;
        double reach = aside * dy;
        double[] steep = image.steep;
        double[] dense = image.dense;
        for (int i = 0; i < weaker.length; i++) {
            double z = along - height[i];
            weaker[i] = (reach + z * dz) * steep[i] - (gap + lean * z) * dense[i];
        }
        double[] force = image.force;
        double turnX = duy;
        double stillX = uy * dz - uz * dy - duz * aside;
        // The line's own direction turns by twice the heel: d(t.r) = line + slope z.
        double sin2 = 2 * sin * cos;
        double cos2 = cos * cos - sin * sin;
        double line = sin2 * dy + cos2 * dz + 2 * heel * cos2 * aside;
        double slope = -2 * heel * sin2;
        double[] apart = placed.lineDistance();
        double[] boundSteep = image.boundSteep;
        double[] boundDense = image.boundDense;
        double[] toX = x;
        for (int i = 0; i < toX.length; i++) {
            double z = along - height[i];
            double bound = (reach + z * dz) * boundSteep[i] - (line + slope * z) * boundDense[i];
            toX[i] += (uy * z - over) * weaker[i] - force[i] * (turnX * z + stillX) + apart[i] * bound;
        }
        double turnY = dux;
        double stillY = ux * dz;
        double[] toY = y;
        for (int i = 0; i < toY.length; i++) {
            double z = along - height[i];
            toY[i] += force[i] * (turnY * z + stillY) - ux * z * weaker[i];
        }
    }

    /** The strips move against the line that the image lies on. */
    private void addLineDistance(ImageLeg image) {
        double rise = 2 * sin * foot + 2 * placed.footHeight() * cos * heel;
        double slope = 2 * (cos * cos - sin * sin) * heel;
        for (int i = 0; i < x.length; i++) {
            x[i] -= (rise + slope * placed.wing().stripHeight(i)) * image.bound[i];
        }
    }

    private double dy(int k) {
        return -deepen(k) * sin - placed.imageDepth(k) * cos * heel;
    }

    private double dz(int k) {
        return -deepen(k) * cos + placed.imageDepth(k) * sin * heel;
    }

    private double deepen(int k) {
        return 2 * (foot - placed.wing().node(k) * sin * heel);
    }
}
