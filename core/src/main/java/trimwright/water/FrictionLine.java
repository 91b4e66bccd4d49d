package trimwright.water;

/**
 * Friction of a smooth turbulent surface: the ITTC 1957 line. Valid for Reynolds numbers of 1e5 to 1e10; below that it
 * is held finite down to rest, so that a model can be asked at any speed.
 */
public final class FrictionLine {
    /** Where the line is bent flat (-), chosen: changes the coefficient by under 1e-4 of itself at 1e6. */
    private static final double REYNOLDS_FLOOR = 1e4;

    private FrictionLine() {}

    private static final double LN_10 = StrictMath.log(10);

    /** Friction coefficient on wetted area (-), Reynolds number (-) on the length along the flow. */
    public static double coefficient(double re) {
        double decades = 0.5 * StrictMath.log10(re * re + REYNOLDS_FLOOR * REYNOLDS_FLOOR) - 2;
        return 0.075 / (decades * decades);
    }

    /** Slope of {@link #coefficient} over the Reynolds number (-). */
    public static double slope(double re) {
        double square = re * re + REYNOLDS_FLOOR * REYNOLDS_FLOOR;
        double decades = 0.5 * StrictMath.log10(square) - 2;
        return -2 * 0.075 / (decades * decades * decades) * re / (square * LN_10);
    }
}
