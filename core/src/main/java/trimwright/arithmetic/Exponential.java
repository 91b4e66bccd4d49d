package trimwright.arithmetic;

/**
 * Exponential function and what follows from it in plain arithmetic: the same on every processor, and quick, for a layer takes
 * several at each station.
 */
public final class Exponential {
    private static final double PER_LN_2 = 1.4426950408889634;

    /** ln 2 in two parts, the first so short that its product with a small whole number is exact. */
    private static final double LN_2_HIGH = 0x1.62e42feep-1;

    private static final double LN_2_LOW = 0x1.a39ef35793c76p-33;

    /** Below this size the result and each step to it are ordinary numbers. */
    private static final double MOST = 700;

    /** Beyond this the hyperbolic tangent is 1 to rounding. */
    private static final double FLAT = 20;

    private static final int MANTISSA_BITS = 52;
    private static final int BIAS = 1023;

    private static final double C2 = 1.0 / 2;
    private static final double C3 = 1.0 / 6;
    private static final double C4 = 1.0 / 24;
    private static final double C5 = 1.0 / 120;
    private static final double C6 = 1.0 / 720;
    private static final double C7 = 1.0 / 5040;
    private static final double C8 = 1.0 / 40320;
    private static final double C9 = 1.0 / 362880;
    private static final double C10 = 1.0 / 3628800;
    private static final double C11 = 1.0 / 39916800;
    private static final double C12 = 1.0 / 479001600;
    private static final double C13 = 1.0 / 6227020800.0;

    private Exponential() {}

    /** Of any number, to two units in the last place. Taylor's series about the nearest multiple of ln 2. */
    public static double of(double x) {
        if (!(x > -MOST && x < MOST)) {
            return StrictMath.exp(x);
        }
        double whole = Math.rint(x * PER_LN_2);
        double r = x - whole * LN_2_HIGH - whole * LN_2_LOW;
        // Pairs in place of one chain, so that the processor works at several at once.
        double q = r * r;
        double low = C2 + r * C3 + q * (C4 + r * C5);
        double middle = C6 + r * C7 + q * (C8 + r * C9);
        double high = C10 + r * C11 + q * (C12 + r * C13);
        double fourth = q * q;
        double sum = 1 + (r + q * (low + fourth * (middle + fourth * high)));
        return sum * Double.longBitsToDouble(((long) whole + BIAS) << MANTISSA_BITS);
    }

    /** Power of a positive number, to four units in the last place for each unit of the result's logarithm and a few more. */
    public static double power(double base, double exponent) {
        return of(exponent * Logarithm.of(base));
    }

    /** Hyperbolic tangent of any number, to a few units in the last place of 1. */
    public static double tanh(double x) {
        if (x > FLAT) {
            return 1;
        }
        if (x < -FLAT) {
            return -1;
        }
        return 1 - 2 / (of(2 * x) + 1);
    }
}
