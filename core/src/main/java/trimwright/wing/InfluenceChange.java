package trimwright.wing;

/**
 * First-order change of the velocities that held circulations make, when the wakes turn or the wing moves over its image:
 * the derivative of {@link Influence} term by term.
 */
final class InfluenceChange {
    private final Influence influence;
    private final double dux;
    private final double duy;
    private final double duz;
    private final double heel;
    private final double foot;

    /**
     * @param trail change of the trailing direction, across it
     * @param heel change of signed roll (rad)
     * @param foot change of the foot's height (m)
     */
    InfluenceChange(Influence influence, double[] trail, double heel, double foot) {
        this.influence = influence;
        dux = trail[0];
        duy = trail[1];
        duz = trail[2];
        this.heel = heel;
        this.foot = foot;
    }

    void add(double[] gamma, double[] toX, double[] toY) {
        int n = gamma.length;
        boolean sea = influence.placed.hasSea();
        for (int k = 0; k <= n; k++) {
            double strength = (k > 0 ? gamma[k - 1] : 0) - (k < n ? gamma[k] : 0);
            leg(k, strength, toX, toY);
            if (sea) {
                imageLeg(k, strength, toX, toY);
            }
        }
        if (sea && (heel != 0 || foot != 0)) {
            for (int j = 0; j < n; j++) {
                imageBound(j, gamma[j], toX);
            }
        }
    }

    private void leg(int k, double strength, double[] toX, double[] toY) {
        double[] leg = influence.placed.wing().legs(k);
        for (int i = 0; i < leg.length; i++) {
            double side = k > i ? 1 : -1;
            double f = leg[i] / (1 - side * influence.uz);
            double df = side * f * duz / (1 - side * influence.uz);
            toX[i] += strength * (duy * f + influence.uy * df);
            toY[i] -= strength * (dux * f + influence.ux * df);
        }
    }

    private void imageLeg(int k, double strength, double[] toX, double[] toY) {
        double[] ry = influence.placed.imageY(k);
        double[] rz = influence.placed.imageZ(k);
        double[] r = influence.placed.imageDistance(k);
        double ux = influence.ux;
        double uy = influence.uy;
        double uz = influence.uz;
        double dy = dy(k);
        double dz = dz(k);
        for (int i = 0; i < r.length; i++) {
            double y = ry[i];
            double z = rz[i];
            double d = r[i];
            double clear = 1 / (d - uy * y - uz * z);
            double f = strength * clear / (4 * Math.PI * d);
            double dd = (y * dy + z * dz) / d;
            double df = -f * (dd / d + (dd - duy * y - uy * dy - duz * z - uz * dz) * clear);
            toX[i] -= (duy * z + uy * dz - duz * y - uz * dy) * f + (uy * z - uz * y) * df;
            toY[i] += (dux * z + ux * dz) * f + ux * z * df;
        }
    }

    /** From node j+1 to node j, as {@link PlacedWing} builds it. */
    private void imageBound(int j, double gamma, double[] toX) {
        double[] y1s = influence.placed.imageY(j + 1);
        double[] z1s = influence.placed.imageZ(j + 1);
        double[] r1s = influence.placed.imageDistance(j + 1);
        double[] y2s = influence.placed.imageY(j);
        double[] z2s = influence.placed.imageZ(j);
        double[] r2s = influence.placed.imageDistance(j);
        double dy1 = dy(j + 1);
        double dz1 = dz(j + 1);
        double dy2 = dy(j);
        double dz2 = dz(j);
        for (int i = 0; i < toX.length; i++) {
            double y1 = y1s[i];
            double z1 = z1s[i];
            double r1 = r1s[i];
            double y2 = y2s[i];
            double z2 = z2s[i];
            double r2 = r2s[i];
            double cross = y1 * z2 - z1 * y2;
            double dCross = dy1 * z2 + y1 * dz2 - dz1 * y2 - z1 * dy2;
            double both = r1 * r2;
            double clear = both + y1 * y2 + z1 * z2;
            double dr1 = (y1 * dy1 + z1 * dz1) / r1;
            double dr2 = (y2 * dy2 + z2 * dz2) / r2;
            double dBoth = dr1 * r2 + r1 * dr2;
            double dClear = dBoth + dy1 * y2 + y1 * dy2 + dz1 * z2 + z1 * dz2;
            double f = gamma / (4 * Math.PI * both * clear);
            toX[i] += f
                    * ((dr1 + dr2) * cross
                            + (r1 + r2) * dCross
                            - (r1 + r2) * cross * (dBoth / both + dClear / clear));
        }
    }

    private double dy(int k) {
        PlacedWing placed = influence.placed;
        return -deepen(k) * Math.sin(placed.heel()) - placed.imageDepth(k) * Math.cos(placed.heel()) * heel;
    }

    private double dz(int k) {
        PlacedWing placed = influence.placed;
        return -deepen(k) * Math.cos(placed.heel()) + placed.imageDepth(k) * Math.sin(placed.heel()) * heel;
    }

    private double deepen(int k) {
        PlacedWing placed = influence.placed;
        return 2 * (foot - placed.wing().node(k) * Math.sin(placed.heel()) * heel);
    }
}
