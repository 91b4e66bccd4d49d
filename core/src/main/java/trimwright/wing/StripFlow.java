package trimwright.wing;

import org.jspecify.annotations.Nullable;
import trimwright.section.SectionPoint;

/**
 * The flow at every strip for given circulations: local velocity, angle of attack, section answer, and the error in each
 * strip's equation, circulation = half of chord x speed x cl. A workspace of one solve.
 */
final class StripFlow {
    /**
     * Spanwise mixing of separated strips: diffusion of circulation over about a chord. Begins where lift begins to fall
     * past stall and is full at MIXING_FULL. Without it a falling lift curve makes neighbouring strips alternate. Chosen.
     */
    private static final double MIXING = 0.2;

    private static final double MIXING_BEGIN = Math.toRadians(2.0);
    private static final double MIXING_FULL = Math.toRadians(10.0);

    /** Square of a speed (m2/s2) that keeps directions defined in still air; far below any wind that matters. */
    static final double STILL = 1e-12;

    final Wing wing;
    final StripAir air;
    final WingSetting setting;
    final Influence influence;
    final int n;
    final double[] flap;
    final double[] reynolds;
    final double[] gamma;
    final double[] vx;
    final double[] vy;
    final double[] speed;
    /** Of the angles of attack. */
    private final double[] sin;

    private final double[] cos;
    final double[] error;
    final SectionPoint[] point;
    final double[] mixing;
    final double[] mixingMargin;
    final double[] bend;
    final double chordX;
    final double chordY;

    /** Factors of the derivatives at circulations met on the way to these, or to a neighbour's; not to be changed. */
    @Nullable
    LuFactors factors;

    StripFlow(Wing wing, StripAir air, WingSetting setting, Influence influence) {
        this.wing = wing;
        this.air = air;
        this.setting = setting;
        this.influence = influence;
        n = wing.strips();
        flap = new double[n];
        reynolds = new double[n];
        gamma = new double[n];
        vx = new double[n];
        vy = new double[n];
        speed = new double[n];
        sin = new double[n];
        cos = new double[n];
        error = new double[n];
        point = new SectionPoint[n];
        mixing = new double[n];
        mixingMargin = new double[n];
        bend = new double[n];
        // From the leading to the trailing edge; across it to the suction side is (-chordY, chordX).
        chordX = -StrictMath.cos(setting.sheet());
        chordY = -StrictMath.sin(setting.sheet());
        double viscosity = air.state().kinematicViscosity();
        for (int i = 0; i < n; i++) {
            flap[i] = setting.flapAngle(wing.flapShare(i));
            reynolds[i] = Math.sqrt(air.x(i) * air.x(i) + air.y(i) * air.y(i)) * wing.stripChord(i) / viscosity;
            point[i] = wing.section(i).newPoint();
            point[i].separated = air.separated(i);
            wing.section(i).hold(flap[i], reynolds[i], point[i]);
        }
    }

    /** Brings lift and errors up to date with {@code gamma}; returns the sum of squared errors. */
    double update() {
        air.copy(vx, vy);
        influence.add(gamma, vx, vy);
        // Loops with one result each run several strips at a time.
        for (int i = 0; i < speed.length; i++) {
            speed[i] = Math.sqrt(vx[i] * vx[i] + vy[i] * vy[i] + STILL);
        }
        for (int i = 0; i < sin.length; i++) {
            sin[i] = (chordX * vy[i] - chordY * vx[i]) / speed[i];
        }
        for (int i = 0; i < cos.length; i++) {
            cos[i] = (chordX * vx[i] + chordY * vy[i]) / speed[i];
        }
        double sum = 0;
        for (int i = 0; i < n; i++) {
            wing.section(i).lift(sin[i], cos[i], point[i]);
            mix(i);
            error[i] = gamma[i] - 0.5 * wing.stripChord(i) * speed[i] * point[i].cl - mixing[i] * bend[i];
            sum += error[i] * error[i];
        }
        return sum;
    }

    /** Drag, moments, exact stall margins and all slopes at the last {@link #update}. */
    void complete() {
        for (int i = 0; i < n; i++) {
            wing.section(i).complete(sin[i], cos[i], point[i]);
        }
    }

    /** Angle of attack of a strip at the last {@link #update} (rad). */
    double alpha(int strip) {
        return StrictMath.atan2(sin[strip], cos[strip]);
    }

    /** Derivatives of the errors by the circulations, a column for each of these. */
    void jacobian(double[][] a) {
        double[] fx = new double[n];
        double[] fy = new double[n];
        for (int i = 0; i < n; i++) {
            double half = 0.5 * wing.stripChord(i) / speed[i];
            double cl = half * point[i].cl;
            double slope = half * point[i].clAlpha;
            if (mixingMargin[i] != 0) {
                slope += mixingMargin[i] * point[i].stallMarginAlpha * bend[i] / (speed[i] * speed[i]);
            }
            // d(speed) = (vx dvx + vy dvy)/speed; d(alpha) = (vx dvy - vy dvx)/speed^2.
            fx[i] = cl * vx[i] - slope * vy[i];
            fy[i] = cl * vy[i] + slope * vx[i];
        }
        for (int j = 0; j < n; j++) {
            minus(fx, influence.x[j], fy, influence.y[j], a[j]);
            a[j][j] += 1 + 2 * mixing[j];
            if (j > 0) {
                a[j][j - 1] -= mixing[j - 1];
            }
            if (j < n - 1) {
                a[j][j + 1] -= mixing[j + 1];
            }
        }
    }

    private static void minus(double[] fx, double[] x, double[] fy, double[] y, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] = -fx[i] * x[i] - fy[i] * y[i];
        }
    }

    private void mix(int i) {
        double x = (-point[i].stallMargin - MIXING_BEGIN) / (MIXING_FULL - MIXING_BEGIN);
        // A share that is held makes no lift curve fall.
        if (x <= 0 || !Double.isNaN(point[i].separated)) {
            mixing[i] = 0;
            mixingMargin[i] = 0;
            bend[i] = 0;
            return;
        }
        double full = MIXING * wing.stripChord(i) / wing.stripWidth(i);
        mixing[i] = x < 1 ? full * x * x * (3 - 2 * x) : full;
        mixingMargin[i] = x < 1 ? -full * 6 * x * (1 - x) / (MIXING_FULL - MIXING_BEGIN) : 0;
        // No circulation beyond foot and head.
        bend[i] = (i > 0 ? gamma[i - 1] : 0) - 2 * gamma[i] + (i < n - 1 ? gamma[i + 1] : 0);
    }
}
