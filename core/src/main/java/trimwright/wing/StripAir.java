package trimwright.wing;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;

/**
 * The air that each strip meets: its velocity relative to the wing there, before the wing disturbs it, in body axes. The
 * caller puts in wind profile, boat speed, heel, roll rate.
 */
public final class StripAir {
    private final double[] x;
    private final double[] y;
    private final double[] z;
    private final AirState state;
    private final double @Nullable [] separated;

    /**
     * Copies the arrays, one value a strip from the foot up.
     *
     * @param x forward (m/s): negative when the wind comes from ahead
     * @param y to starboard (m/s): negative when the wind comes from starboard
     * @param z down (m/s)
     */
    public StripAir(double[] x, double[] y, double[] z, AirState state) {
        this(x, y, z, state, null);
    }

    /**
     * The same on a wing whose flow has a history.
     *
     * @param separated share of each strip's flow that is separated (-), held; null where it is that of steady flow
     */
    public StripAir(double[] x, double[] y, double[] z, AirState state, double @Nullable [] separated) {
        if (x.length != y.length || x.length != z.length) {
            throw new IllegalArgumentException("air velocities of " + x.length + ", " + y.length + ", " + z.length
                    + " strips; the three must agree");
        }
        this.x = x.clone();
        this.y = y.clone();
        this.z = z.clone();
        this.state = state;
        this.separated = separated == null ? null : separated.clone();
        for (int i = 0; i < x.length; i++) {
            if (!(Math.abs(x[i]) + Math.abs(y[i]) + Math.abs(z[i]) < 400)) {
                throw new IllegalArgumentException("air velocity at strip " + i + " is not a speed below 400 m/s: "
                        + x[i] + ", " + y[i] + ", " + z[i]);
            }
        }
    }

    /** The same level air at every strip of an upright wing: speed (m/s), angle from the bow it comes from (rad). */
    public static StripAir uniform(int strips, double speed, double angle, AirState state) {
        return uniform(strips, speed, angle, 0, state);
    }

    /** The same level air at every strip of a wing at a signed roll (rad), which turns it into the wing's axes. */
    public static StripAir uniform(int strips, double speed, double angle, double roll, AirState state) {
        double[] x = new double[strips];
        double[] y = new double[strips];
        double[] z = new double[strips];
        Arrays.fill(x, -speed * StrictMath.cos(angle));
        Arrays.fill(y, -speed * StrictMath.sin(angle) * StrictMath.cos(roll));
        Arrays.fill(z, speed * StrictMath.sin(angle) * StrictMath.sin(roll));
        return new StripAir(x, y, z, state);
    }

    /** Mirrored in the centreplane. */
    public StripAir mirror() {
        double[] other = y.clone();
        for (int i = 0; i < other.length; i++) {
            other[i] = -other[i];
        }
        return new StripAir(x, other, z, state, separated);
    }

    /** All velocities times a factor (-). */
    public StripAir scaled(double factor) {
        double[] sx = x.clone();
        double[] sy = y.clone();
        double[] sz = z.clone();
        for (int i = 0; i < sx.length; i++) {
            sx[i] *= factor;
            sy[i] *= factor;
            sz[i] *= factor;
        }
        return new StripAir(sx, sy, sz, state, separated);
    }

    /** Copies the components forward and to starboard. */
    void copy(double[] toX, double[] toY) {
        System.arraycopy(x, 0, toX, 0, x.length);
        System.arraycopy(y, 0, toY, 0, y.length);
    }

    public int strips() {
        return x.length;
    }

    public double x(int strip) {
        return x[strip];
    }

    public double y(int strip) {
        return y[strip];
    }

    public double z(int strip) {
        return z[strip];
    }

    /** Share of a strip's flow that is separated (-), NaN where it is that of steady flow. */
    double separated(int strip) {
        return separated == null ? Double.NaN : separated[strip];
    }

    public AirState state() {
        return state;
    }
}
