package trimwright.section;

import java.util.List;
import trimwright.arithmetic.Arc;
import trimwright.arithmetic.Exponential;
import trimwright.arithmetic.Logarithm;

/**
 * A section from tables of computed flow: between the stalls as computed, past them as {@link StalledPlate} tells. Value and
 * first derivatives continuous, derivatives exact, any angle.
 */
final class TabledSection implements SectionModel {
    /**
     * Places beyond stall at which the row is led on, and share of the slope at stall that each has gained: a parabola whose
     * slope is gone 0.15 past stall.
     */
    private static final double[] BEYOND = {1.08, 1.15};

    private static final double[] GAINED = {0.0587, 0.075};

    /** Steps beyond the ends of Reynolds number (of its logarithm) and flap angle (rad) in which slopes fade to zero, chosen. */
    private static final double RE_FADE = 0.5;

    private static final double FLAP_FADE = Math.toRadians(4);

    /** Nodes at negative flap angles, for the slopes at the straight flap. */
    private static final int MIRRORED = 2;

    /** Half width (rad) about the middle between both stalls where the nearer one changes, chosen. */
    private static final double SIDE = 0.1;

    private static final int MIDDLE = 0;
    private static final int HALF = 1;

    private final HermiteTable table;
    private final HermiteTable limits;
    private final StalledPlate plate;
    private final double arm;

    TabledSection(SectionTable from, SectionShape shape, SectionTuning tuning) {
        arm = shape.turningAxisRatio() - 0.25;
        plate = new StalledPlate(shape, tuning, new AttachedFlow(shape, tuning));
        TableGrid grid = from.grid();
        double[] share = from.shares(shape.thicknessRatio());
        double[] s = places(grid);
        double[] flap = flaps(grid);
        double[] logRe = logReynolds(grid);
        int nFlap = grid.flaps().size();
        int nRe = grid.reynolds().size();
        double[][][][] value = new double[SectionQuantity.values().length][s.length][flap.length][logRe.length];
        double[][][][] limit = new double[2][3][flap.length][logRe.length];
        for (int k = 0; k < nRe; k++) {
            for (int j = 0; j < nFlap; j++) {
                double low = 0;
                double high = 0;
                for (int t = 0; t < share.length; t++) {
                    low += share[t] * from.column(t, k).low(j);
                    high += share[t] * from.column(t, k).high(j);
                }
                for (int i = 0; i < 3; i++) {
                    limit[MIDDLE][i][j + MIRRORED][k + 1] = 0.5 * (high + low);
                    limit[HALF][i][j + MIRRORED][k + 1] = 0.5 * (high - low);
                }
            }
            for (SectionQuantity q : SectionQuantity.values()) {
                for (int j = 0; j < nFlap; j++) {
                    for (int i = 0; i < grid.places().size(); i++) {
                        double sum = 0;
                        for (int t = 0; t < share.length; t++) {
                            sum += share[t] * from.column(t, k).value(q, j, i);
                        }
                        value[q.ordinal()][i + BEYOND.length][j + MIRRORED][k + 1] = sum;
                    }
                }
            }
        }
        for (SectionQuantity q : SectionQuantity.values()) {
            leadOn(s, flap, logRe, value[q.ordinal()], q.mirror());
        }
        leadOn(new double[0], flap, logRe, limit[MIDDLE], -1);
        leadOn(new double[0], flap, logRe, limit[HALF], 1);
        table = new HermiteTable(s, flap, logRe, value);
        limits = new HermiteTable(new double[] {0, 1, 2}, flap, logRe, limit);
    }

    private static double[] places(TableGrid grid) {
        List<Double> inner = grid.places();
        int beyond = BEYOND.length;
        double[] s = new double[inner.size() + 2 * beyond];
        for (int i = 0; i < inner.size(); i++) {
            s[i + beyond] = inner.get(i);
        }
        for (int i = 0; i < beyond; i++) {
            s[beyond - 1 - i] = -BEYOND[i];
            s[s.length - beyond + i] = BEYOND[i];
        }
        return s;
    }

    /** With negative angles, whose answers are the mirror's, and one beyond the last. */
    private static double[] flaps(TableGrid grid) {
        int n = grid.flaps().size();
        double[] flap = new double[n + MIRRORED + 1];
        for (int j = 0; j < MIRRORED; j++) {
            flap[j] = -grid.flaps().get(MIRRORED - j);
        }
        for (int j = 0; j < n; j++) {
            flap[j + MIRRORED] = grid.flaps().get(j);
        }
        flap[n + MIRRORED] = flap[n + MIRRORED - 1] + FLAP_FADE;
        return flap;
    }

    private static double[] logReynolds(TableGrid grid) {
        int n = grid.reynolds().size();
        double[] logRe = new double[n + 2];
        for (int k = 0; k < n; k++) {
            logRe[k + 1] = StrictMath.log(grid.reynolds().get(k));
        }
        logRe[0] = logRe[1] - RE_FADE;
        logRe[n + 1] = logRe[n] + RE_FADE;
        return logRe;
    }

    /** Fills the nodes beyond the computed ones: past stall, of the mirror, beyond the ends. */
    private static void leadOn(double[] s, double[] flap, double[] logRe, double[][][] v, int mirror) {
        int nx = v.length;
        int ny = flap.length;
        int nz = logRe.length;
        for (int k = 1; k < nz - 1; k++) {
            if (s.length > 0) {
                int end = nx - 1 - BEYOND.length;
                for (int j = MIRRORED; j < ny - 1; j++) {
                    double up = (v[end][j][k] - v[end - 1][j][k]) / (s[end] - s[end - 1]);
                    int begin = BEYOND.length;
                    double down = (v[begin][j][k] - v[begin + 1][j][k]) / (s[begin + 1] - s[begin]);
                    for (int i = 0; i < BEYOND.length; i++) {
                        v[end + 1 + i][j][k] = v[end][j][k] + GAINED[i] * up;
                        v[begin - 1 - i][j][k] = v[begin][j][k] + GAINED[i] * down;
                    }
                }
            }
            for (int i = 0; i < nx; i++) {
                for (int j = 0; j < MIRRORED; j++) {
                    v[i][j][k] = mirror * v[nx - 1 - i][2 * MIRRORED - j][k];
                }
                // Half a step's growth: a parabola whose slope ends at zero.
                double growth = (v[i][ny - 2][k] - v[i][ny - 3][k]) / (flap[ny - 2] - flap[ny - 3]);
                v[i][ny - 1][k] = v[i][ny - 2][k] + 0.5 * FLAP_FADE * growth;
            }
        }
        for (int i = 0; i < nx; i++) {
            for (int j = 0; j < ny; j++) {
                double low = (v[i][j][1] - v[i][j][2]) / (logRe[2] - logRe[1]);
                double high = (v[i][j][nz - 2] - v[i][j][nz - 3]) / (logRe[nz - 2] - logRe[nz - 3]);
                v[i][j][0] = v[i][j][1] + 0.5 * RE_FADE * low;
                v[i][j][nz - 1] = v[i][j][nz - 2] + 0.5 * RE_FADE * high;
            }
        }
    }

    @Override
    public SectionPoint newPoint() {
        return SectionPoint.ofTables();
    }

    @Override
    public void evaluate(double alpha, double flapAngle, double reynolds, SectionPoint out) {
        double sin = StrictMath.sin(alpha);
        double cos = StrictMath.cos(alpha);
        hold(flapAngle, reynolds, out);
        lift(sin, cos, out);
        complete(sin, cos, out);
    }

    @Override
    public void hold(double flapAngle, double reynolds, SectionPoint out) {
        SectionModel.super.hold(flapAngle, reynolds, out);
        // Endings: A by alpha, F by flap angle, R by log Reynolds number, of the state mirrored to a positive flap
        // angle.
        HermiteTable.Spot spot = out.spot();
        double logRe = Logarithm.of(Math.max(reynolds, 1));
        limits.placeYz(
                Math.min(Math.abs(flapAngle), limits.y().last()),
                Math.max(limits.z().first(), Math.min(limits.z().last(), logRe)),
                spot);
        double[] v = spot.value;
        limits.across(HALF, spot, v);
        spot.half = v[0];
        spot.halfF = v[1];
        spot.halfR = v[2];
        limits.across(MIDDLE, spot, v);
        spot.middle = v[0];
        spot.middleF = v[1];
        spot.middleR = v[2];
        spot.sA = 1 / spot.half;
        spot.rowInterval = -1;
    }

    @Override
    public void lift(double sin, double cos, SectionPoint out) {
        HermiteTable.Spot spot = out.spot();
        double alpha = Arc.angle(sin, cos);
        double side = out.flapAngle < 0 || out.flapAngle == 0 && alpha < 0 ? -1 : 1;
        spot.side = side;
        double half = spot.half;
        double x = side * alpha - spot.middle;

        // Distance to the nearer stall.
        double size = Math.abs(x) < SIDE ? (x * x + SIDE * SIDE) / (2 * SIDE) : Math.abs(x);
        double sizeX = Math.abs(x) < SIDE ? x / SIDE : Math.signum(x);
        out.stallMargin = half - size;
        out.stallMarginAlpha = -side * sizeX;
        spot.sizeX = sizeX;
        spot.s = x / half;
        table.placeX(Math.max(table.x().first(), Math.min(table.x().last(), spot.s)), spot);
        double[] v = spot.value;
        table.along(SectionQuantity.LIFT.ordinal(), spot, v);
        out.cl = side * v[0];
        out.clAlpha = v[1] * spot.sA;
        if (plate.isMixed(out)) {
            // The plate mixes into everything at once.
            rest(sin, cos, out);
            plate.mixInto(alpha, out.flapAngle, out.reynolds, out);
        }
    }

    @Override
    public void complete(double sin, double cos, SectionPoint out) {
        if (!plate.isMixed(out)) {
            rest(sin, cos, out);
        }
    }

    /** Slopes of stall margin and lift by flap angle and Reynolds number, drag, moment and hinge moment, after lift. */
    private void rest(double sin, double cos, SectionPoint out) {
        HermiteTable.Spot spot = out.spot();
        double side = spot.side;
        out.stallMarginFlap = side * (spot.halfF + spot.sizeX * spot.middleF);
        out.stallMarginLogRe = spot.halfR + spot.sizeX * spot.middleR;
        double sF = -(spot.middleF + spot.s * spot.halfF) / spot.half;
        double sR = -(spot.middleR + spot.s * spot.halfR) / spot.half;
        double[] v = spot.value;
        table.at(SectionQuantity.LIFT.ordinal(), spot, v);
        out.clFlap = v[2] + v[1] * sF;
        out.clLogRe = side * (v[3] + v[1] * sR);
        table.at(SectionQuantity.LOG_DRAG.ordinal(), spot, v);
        out.cd = Exponential.of(v[0]);
        out.cdAlpha = side * out.cd * v[1] * spot.sA;
        out.cdFlap = side * out.cd * (v[2] + v[1] * sF);
        out.cdLogRe = out.cd * (v[3] + v[1] * sR);
        table.at(SectionQuantity.HINGE.ordinal(), spot, v);
        out.hinge = side * v[0];
        out.hingeAlpha = v[1] * spot.sA;
        out.hingeFlap = v[2] + v[1] * sF;
        out.hingeLogRe = side * (v[3] + v[1] * sR);

        // From the quarter chord to the turning axis by the force across the chord.
        table.at(SectionQuantity.QUARTER_MOMENT.ordinal(), spot, v);
        double across = out.cl * cos + out.cd * sin;
        out.cm = side * v[0] + arm * across;
        out.cmAlpha = v[1] * spot.sA + arm * (out.clAlpha * cos + out.cdAlpha * sin - out.cl * sin + out.cd * cos);
        out.cmFlap = v[2] + v[1] * sF + arm * (out.clFlap * cos + out.cdFlap * sin);
        out.cmLogRe = side * (v[3] + v[1] * sR) + arm * (out.clLogRe * cos + out.cdLogRe * sin);
    }
}
