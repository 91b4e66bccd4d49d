package trimwright.arithmetic;

/**
 * Cosine and sine to 1e-11 for angles up to some ten thousand (rad), the same bits on every machine: nearest quarter turn taken
 * off, Taylor's series for the rest. Several times as fast as the library's, for the many that one reading of a random field asks
 * for.
 */
public final class FastCircle {
    private static final double QUARTER = Math.PI / 2;
    private static final double PER_QUARTER = 2 / Math.PI;

    private static final double S3 = -1.0 / 6;
    private static final double S5 = 1.0 / 120;
    private static final double S7 = -1.0 / 5040;
    private static final double S9 = 1.0 / 362880;
    private static final double S11 = -1.0 / 39916800;
    private static final double S13 = 1.0 / 6227020800.0;

    private static final double C2 = -1.0 / 2;
    private static final double C4 = 1.0 / 24;
    private static final double C6 = -1.0 / 720;
    private static final double C8 = 1.0 / 40320;
    private static final double C10 = -1.0 / 3628800;
    private static final double C12 = 1.0 / 479001600;
    private static final double C14 = -1.0 / 87178291200.0;

    private FastCircle() {}

    /** Cosine of an angle (rad). */
    public static double cos(double angle) {
        double quarters = Math.rint(angle * PER_QUARTER);
        double rest = angle - quarters * QUARTER;
        int quarter = (int) quarters;
        double size = (quarter & 1) == 0 ? even(rest) : odd(rest);
        return (quarter + 1 & 2) == 0 ? size : -size;
    }

    /** Sine of an angle (rad). */
    public static double sin(double angle) {
        double quarters = Math.rint(angle * PER_QUARTER);
        double rest = angle - quarters * QUARTER;
        int quarter = (int) quarters;
        double size = (quarter & 1) == 0 ? odd(rest) : even(rest);
        return (quarter & 2) == 0 ? size : -size;
    }

    /** Cosine of an eighth of a turn at most. */
    private static double even(double x) {
        double y = x * x;
        return 1 + y * (C2 + y * (C4 + y * (C6 + y * (C8 + y * (C10 + y * (C12 + y * C14))))));
    }

    /** Sine of an eighth of a turn at most. */
    private static double odd(double x) {
        double y = x * x;
        return x * (1 + y * (S3 + y * (S5 + y * (S7 + y * (S9 + y * (S11 + y * S13))))));
    }
}
