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
        double[] clear = new double[n];
        double[] force = new double[n];
        double[] above = new double[n];
        double[] below = new double[n];
        for (int k = 0; k <= n; k++) {
            double strength = (k > 0 ? gamma[k - 1] : 0) - (k < n ? gamma[k] : 0);
            add(placed.wing().legs(k), strength, 0, Math.min(k, n), above);
            add(placed.wing().legs(k), strength, Math.min(k, n), n, below);
            if (placed.hasSea()) {
                influence.imageClearance(k, clear);
                scale(placed.imageNearness(k), clear, strength / (4 * Math.PI), force);
                for (InfluenceChange change : changes) {
                    change.addImageLeg(k, clear, force);
                }
            }
        }
        PlateFlow plate = influence.plate();
        for (InfluenceChange change : changes) {
            change.addLegs(above, below);
            if (plate != null) {
                double[] trail = {change.dux, change.duy, change.duz};
                plate.addChange(gamma, trail, change.heel, change.foot, change.x, change.y);
            }
        }
        for (int j = 0; placed.hasSea() && j < n; j++) {
            placed.boundClearance(j, clear);
            for (InfluenceChange change : changes) {
                if (change.heel != 0 || change.foot != 0) {
                    change.addImageBound(j, gamma[j], clear);
                }
            }
        }
    }

    /** Adds the change of velocity, forward and to starboard. */
    void addTo(double[] vx, double[] vy) {
        for (int i = 0; i < x.length; i++) {
            vx[i] += x[i];
            vy[i] += y[i];
        }
    }

    private static void scale(double[] a, double[] b, double factor, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] = factor * a[i] * b[i];
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

    /** Clearance and force: the two factors of the image leg's velocity, 1/(r - u.r) and that over 4 pi r times strength. */
    private void addImageLeg(int k, double[] clear, double[] force) {
        double[] rz = placed.imageZ(k);
        double[] near = placed.imageNearness(k);
        double ry = placed.imageY(k);
        double dy = dy(k);
        double dz = dz(k);
        double ux = influence.ux;
        double uy = influence.uy;
        double uz = influence.uz;
        double turnX = duy;
        double stillX = uy * dz - uz * dy - duz * ry;
        double turnY = dux;
        double stillY = ux * dz;
        double gap = duy * ry + uy * dy + uz * dz;
        double lean = duz;
        double reach = ry * dy;
        double[] toX = x;
        for (int i = 0; i < toX.length; i++) {
            double dr = (reach + rz[i] * dz) * near[i];
            double weaker = dr * near[i] + (dr - gap - lean * rz[i]) * clear[i];
            toX[i] -= force[i] * (turnX * rz[i] + stillX - (uy * rz[i] - uz * ry) * weaker);
        }
        double[] toY = y;
        for (int i = 0; i < toY.length; i++) {
            double dr = (reach + rz[i] * dz) * near[i];
            double weaker = dr * near[i] + (dr - gap - lean * rz[i]) * clear[i];
            toY[i] += force[i] * (turnY * rz[i] + stillY - ux * rz[i] * weaker);
        }
    }

    /** From node j+1 to node j, as {@link PlacedWing} has it; clearance 1/(r1 r2 + r1.r2). */
    private void addImageBound(int j, double gamma, double[] clear) {
        double[] z1 = placed.imageZ(j + 1);
        double[] r1 = placed.imageDistance(j + 1);
        double[] near1 = placed.imageNearness(j + 1);
        double[] z2 = placed.imageZ(j);
        double[] r2 = placed.imageDistance(j);
        double[] near2 = placed.imageNearness(j);
        double y1 = placed.imageY(j + 1);
        double y2 = placed.imageY(j);
        double dy1 = dy(j + 1);
        double dz1 = dz(j + 1);
        double dy2 = dy(j);
        double dz2 = dz(j);
        double share = gamma / (4 * Math.PI);
        double[] toX = x;
        for (int i = 0; i < toX.length; i++) {
            double cross = y1 * z2[i] - z1[i] * y2;
            double dCross = dy1 * z2[i] + y1 * dz2 - dz1 * y2 - z1[i] * dy2;
            double dr1 = (y1 * dy1 + z1[i] * dz1) * near1[i];
            double dr2 = (y2 * dy2 + z2[i] * dz2) * near2[i];
            double dClear = dr1 * r2[i] + r1[i] * dr2 + dy1 * y2 + y1 * dy2 + dz1 * z2[i] + z1[i] * dz2;
            double sum = r1[i] + r2[i];
            double weaker = dr1 * near1[i] + dr2 * near2[i] + dClear * clear[i];
            toX[i] += share * near1[i] * near2[i] * clear[i] * ((dr1 + dr2) * cross + sum * (dCross - cross * weaker));
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
