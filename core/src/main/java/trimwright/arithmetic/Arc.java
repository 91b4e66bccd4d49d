package trimwright.arithmetic;

/** Angle of a direction in plain arithmetic, quick where it is small: as panels are seen, and as air meets a section. */
public final class Arc {
    /** Most panels are seen under small angles, for which seven terms of the series are exact to rounding, and far quicker. */
    public static final double SERIES = 0.08;

    /** Four times the angle that the series serves has this tangent, a little less. */
    private static final double HALVED_TWICE = 0.33;

    private static final double THIRD = 1.0 / 3;
    private static final double FIFTH = 1.0 / 5;
    private static final double SEVENTH = 1.0 / 7;
    private static final double NINTH = 1.0 / 9;
    private static final double ELEVENTH = 1.0 / 11;
    private static final double THIRTEENTH = 1.0 / 13;

    private Arc() {}

    /** Angle (rad), -pi to pi, of a direction with these sine and cosine in proportion; 0 for none. */
    public static double angle(double sine, double cosine) {
        double ratio = sine / cosine;
        double size = Math.abs(ratio);
        if (cosine > 0 && size < SERIES) {
            return series(ratio);
        }
        if (cosine > 0 && size < HALVED_TWICE) {
            // Tangent of the quarter of the angle, by halving twice.
            double half = ratio / (1 + Math.sqrt(1 + ratio * ratio));
            return 4 * series(half / (1 + Math.sqrt(1 + half * half)));
        }
        return sine == 0 && cosine >= 0 ? 0 : StrictMath.atan2(sine, cosine);
    }

    /** Of a tangent below SERIES, either sign. */
    public static double series(double tangent) {
        double square = tangent * tangent;
        return tangent
                * (1
                        - square
                                * (THIRD
                                        - square
                                                * (FIFTH
                                                        - square
                                                                * (SEVENTH
                                                                        - square
                                                                                * (NINTH
                                                                                        - square
                                                                                                * (ELEVENTH
                                                                                                        - square
                                                                                                                * THIRTEENTH))))));
    }
}
