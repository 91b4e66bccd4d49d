package trimwright.arithmetic;

/**
 * Natural logarithm in plain arithmetic: the same on every processor, and quick, for setting up a flow takes a logarithm for each
 * pair of a panel and a point, and a layer several at each station.
 */
public final class Logarithm {
    private static final double LN_2 = 0.6931471805599453;

    /** Bits of the root of a half: numbers are taken apart into powers of 2 and what lies from there to twice as much, near 1. */
    private static final long LOW = 0x3FE6A09E667F3BCDL;

    private static final int MANTISSA_BITS = 52;
    private static final long EXPONENT = -1L << MANTISSA_BITS;

    private static final double C3 = 2.0 / 3;
    private static final double C5 = 2.0 / 5;
    private static final double C7 = 2.0 / 7;
    private static final double C9 = 2.0 / 9;
    private static final double C11 = 2.0 / 11;
    private static final double C13 = 2.0 / 13;
    private static final double C15 = 2.0 / 15;
    private static final double C17 = 2.0 / 17;
    private static final double C19 = 2.0 / 19;
    private static final double C21 = 2.0 / 21;

    private Logarithm() {}

    /** Of any number, to a few units in the last place. Series of the inverse hyperbolic tangent. */
    public static double of(double x) {
        if (!(x >= Double.MIN_NORMAL && x < Double.POSITIVE_INFINITY)) {
            return StrictMath.log(x);
        }
        long bits = Double.doubleToRawLongBits(x);
        long above = bits - LOW;
        long exponent = above >> MANTISSA_BITS;
        double m = Double.longBitsToDouble(bits - (above & EXPONENT));
        double s = (m - 1) / (m + 1);
        double q = s * s;
        double high = q * (C11 + q * (C13 + q * (C15 + q * (C17 + q * (C19 + q * C21)))));
        return exponent * LN_2 + s * (2 + q * (C3 + q * (C5 + q * (C7 + q * (C9 + high)))));
    }
}
