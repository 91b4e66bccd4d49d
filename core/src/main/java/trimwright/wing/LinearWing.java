package trimwright.wing;

import org.jspecify.annotations.Nullable;
import trimwright.section.SectionPoint;

/**
 * A wing near a flow that was solved in full: sections on their tangents there, the flow of the strips on one another as there, so that
 * a step costs one product with a matrix that was factored before. Serves below stall and as long as nothing is far from that flow; beyond
 * it answers nothing and a full solution has to be laid anew.
 *
 * <p>Keeps the circulations from step to step, so it is for one wing in one run. Each step is one of Newton's with the slopes of the flow
 * laid: what it leaves is taken by the next.
 */
public final class LinearWing {
    /** Angle of attack to stall that every strip must keep (rad): chosen, lift bends from there on. */
    public static final double LEAST_MARGIN = Math.toRadians(2);

    /** How far a strip's angle of attack, its flap and the wakes' direction may be from those laid (rad): chosen. */
    private static final double FAR = Math.toRadians(0.6);

    /** How far heel may be (rad): chosen. */
    private static final double FAR_HEEL = Math.toRadians(0.4);

    /** How far the height of the foot may be, over the wing's span (-): chosen. */
    private static final double FAR_HEIGHT = 0.005;

    /** How far the speed of the air may be, over that laid (-): chosen. */
    private static final double FAR_SPEED = 0.04;

    private final StripFlow laid;
    private final double laidHeel;
    private final double laidFoot;
    private final LuFactors factors;
    private final double[] laidSpeed;
    private final double[] gamma;
    private final double[] vx;
    private final double[] vy;
    private final double[] turned;
    private final double[] flap;
    private final double[] faster;
    private final double[] error;
    private double margin;

    private LinearWing(StripFlow laid, double heel, double foot, LuFactors factors) {
        this.laid = laid;
        this.laidHeel = heel;
        this.laidFoot = foot;
        this.factors = factors;
        gamma = laid.gamma.clone();
        laidSpeed = new double[laid.n];
        for (int i = 0; i < laid.n; i++) {
            laidSpeed[i] = speed(laid.air.x(i), laid.air.y(i));
        }
        vx = new double[laid.n];
        vy = new double[laid.n];
        turned = new double[laid.n];
        flap = new double[laid.n];
        faster = new double[laid.n];
        error = new double[laid.n];
    }

    private LinearWing(LinearWing of) {
        this(of.laid, of.laidHeel, of.laidFoot, of.factors);
        System.arraycopy(of.gamma, 0, gamma, 0, gamma.length);
    }

    /** Laid at a solution; null where that is too near to stall or there is no wind. */
    public static @Nullable LinearWing at(WingSolved solved) {
        StripFlow flow = solved.flow();
        if (flow == null || !(solved.stallMargin() > LEAST_MARGIN)) {
            return null;
        }
        LuFactors factors = new LuFactors(flow.n);
        flow.jacobian(factors.columns());
        PlacedWing placed = flow.influence.placed;
        return factors.factor() ? new LinearWing(flow, placed.heel(), placed.footHeight(), factors) : null;
    }

    /** One that goes on from here by itself. */
    public LinearWing copy() {
        return new LinearWing(this);
    }

    /**
     * The force in this air, or null where the flow laid does not serve.
     *
     * @param x air past each strip forward (m/s), y to starboard, in body axes
     * @param y see x
     * @param heel signed roll (rad)
     * @param footHeight of the wing's foot over the water (m)
     */
    public @Nullable WingForce force(double[] x, double[] y, WingSetting setting, double heel, double footHeight) {
        if (!(Math.abs(heel - laidHeel) < FAR_HEEL)
                || !(Math.abs(footHeight - laidFoot) < FAR_HEIGHT * laid.wing.span())
                || !place(x, y, setting)) {
            return null;
        }
        double chordX = -StrictMath.cos(setting.sheet());
        double chordY = -StrictMath.sin(setting.sheet());
        if (!flow(x, y, chordX, chordY)) {
            return null;
        }
        for (int i = 0; i < gamma.length; i++) {
            error[i] = gamma[i] - 0.5 * laid.wing.stripChord(i) * speed(vx[i], vy[i]) * lift(i);
        }
        factors.solve(error);
        for (int i = 0; i < gamma.length; i++) {
            gamma[i] -= error[i];
        }
        return flow(x, y, chordX, chordY) && margin > LEAST_MARGIN ? sum() : null;
    }

    /** Least distance to stall at the last force (rad of angle of attack). */
    public double stallMargin() {
        return margin;
    }

    /** Flap angles and speeds; false where one is far from what was laid. */
    private boolean place(double[] x, double[] y, WingSetting setting) {
        for (int i = 0; i < flap.length; i++) {
            flap[i] = setting.flapAngle(laid.wing.flapShare(i)) - laid.flap[i];
            faster[i] = speed(x[i], y[i]) / laidSpeed[i] - 1;
            // The wakes go with the air: as far as this has turned, they have.
            double aside = x[i] * laid.air.y(i) - y[i] * laid.air.x(i);
            double along = x[i] * laid.air.x(i) + y[i] * laid.air.y(i);
            if (!(Math.abs(flap[i]) < FAR) || !(Math.abs(faster[i]) < FAR_SPEED) || !(Math.abs(aside) < FAR * along)) {
                return false;
            }
        }
        return true;
    }

    /** Velocities with the present circulations, and how far each has turned from the one laid. */
    private boolean flow(double[] x, double[] y, double chordX, double chordY) {
        System.arraycopy(x, 0, vx, 0, x.length);
        System.arraycopy(y, 0, vy, 0, y.length);
        laid.influence.add(gamma, vx, vy);
        margin = Double.POSITIVE_INFINITY;
        double turn = chordX * laid.chordY - chordY * laid.chordX;
        double same = chordX * laid.chordX + chordY * laid.chordY;
        for (int i = 0; i < vx.length; i++) {
            // Tangent of the angle between the streams, both seen from their chords.
            double aside = laid.vx[i] * vy[i] - laid.vy[i] * vx[i];
            double along = laid.vx[i] * vx[i] + laid.vy[i] * vy[i];
            double sin = aside * same + along * turn;
            double cos = along * same - aside * turn;
            double tan = sin / cos;
            if (!(cos > 0) || !(Math.abs(tan) < FAR)) {
                return false;
            }
            turned[i] = tan - tan * tan * tan / 3;
            SectionPoint at = laid.point[i];
            margin = Math.min(
                    margin,
                    at.stallMargin
                            + at.stallMarginAlpha * turned[i]
                            + at.stallMarginFlap * flap[i]
                            + at.stallMarginLogRe * faster[i]);
        }
        return true;
    }

    private double lift(int i) {
        SectionPoint at = laid.point[i];
        return at.cl + at.clAlpha * turned[i] + at.clFlap * flap[i] + at.clLogRe * faster[i];
    }

    private WingForce sum() {
        Wing wing = laid.wing;
        double density = laid.air.state().density();
        double x = 0;
        double y = 0;
        double k = 0;
        double m = 0;
        double couple = 0;
        for (int i = 0; i < gamma.length; i++) {
            SectionPoint at = laid.point[i];
            double cd = at.cd + at.cdAlpha * turned[i] + at.cdFlap * flap[i] + at.cdLogRe * faster[i];
            double cm = at.cm + at.cmAlpha * turned[i] + at.cmFlap * flap[i] + at.cmLogRe * faster[i];
            double chord = wing.stripChord(i);
            double width = wing.stripWidth(i);
            double height = wing.stripHeight(i);
            double speed = speed(vx[i], vy[i]);
            double lift = density * gamma[i] * width;
            double drag = 0.5 * density * speed * chord * width * cd;
            double forceX = drag * vx[i] - lift * vy[i];
            double forceY = drag * vy[i] + lift * vx[i];
            x += forceX;
            y += forceY;
            k += height * forceY;
            m -= height * forceX;
            couple -= 0.5 * density * speed * speed * chord * chord * width * cm;
        }
        return new WingForce(x, y, 0, k, m, couple);
    }

    private static double speed(double x, double y) {
        return Math.sqrt(x * x + y * y + StripFlow.STILL);
    }
}
