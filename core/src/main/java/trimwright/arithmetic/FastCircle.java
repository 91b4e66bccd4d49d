package trimwright.arithmetic;

/**
 * Cosine and sine in plain arithmetic: the same on every processor, and several times as quick as the library's, for the many
 * waves that one reading of a field asks for. To 1e-13 for angles up to a thousand (rad), from there on in proportion to the
 * angle. Nearest quarter of a turn taken off, Taylor's series for the rest.
 */
public final class FastCircle {
    private static final double QUARTER = Math.PI / 2;
    private static final double PER_QUARTER = 2 / Math.PI;

    private static final double C2 = -1.0 / 2;
    private static final double C3 = -1.0 / 6;
    private static final double C4 = 1.0 / 24;
    private static final double C5 = 1.0 / 120;
    private static final double C6 = -1.0 / 720;
    private static final double C7 = -1.0 / 5040;
    private static final double C8 = 1.0 / 40320;
    private static final double C9 = 1.0 / 362880;
    private static final double C10 = -1.0 / 3628800;
    private static final double C11 = -1.0 / 39916800;
    private static final double C12 = 1.0 / 479001600;
    private static final double C13 = 1.0 / 6227020800.0;
    private static final double C14 = -1.0 / 87178291200.0;
    private static final double C15 = -1.0 / 1307674368000.0;
    private static final double C16 = 1.0 / 20922789888000.0;

    private FastCircle() {}

    /** Cosine of an angle (rad) of either sign below a thousand million. */
    public static double cos(double angle) {
        double quarters = Math.rint(angle * PER_QUARTER);
        return ofQuarter((int) quarters + 1, angle - quarters * QUARTER);
    }

    /** Sine of an angle (rad) of either sign below a thousand million. */
    public static double sin(double angle) {
        double quarters = Math.rint(angle * PER_QUARTER);
        return ofQuarter((int) quarters, angle - quarters * QUARTER);
    }

    /** Sine of so many quarters of a turn and a rest of at most half a one. */
    private static double ofQuarter(int quarters, double rest) {
        return switch (quarters & 3) {
            case 0 -> odd(rest);
            case 1 -> even(rest);
            case 2 -> -odd(rest);
            default -> -even(rest);
        };
    }

    /** Cosine of an eighth of a turn at most. Pairs in place of one chain, so that the processor works at several at once. */
    private static double even(double x) {
        double y = x * x;
        double z = y * y;
        return 1 + (y * (C2 + y * C4) + z * y * ((C6 + y * C8) + z * ((C10 + y * C12) + z * (C14 + y * C16))));
    }

    /** Sine of an eighth of a turn at most. */
    private static double odd(double x) {
        double y = x * x;
        double z = y * y;
        return x + x * y * ((C3 + y * C5) + z * ((C7 + y * C9) + z * ((C11 + y * C13) + z * C15)));
    }
}
