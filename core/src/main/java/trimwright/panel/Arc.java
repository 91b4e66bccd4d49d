package trimwright.panel;

/** Angles under which panels are seen. */
final class Arc {
    /** Most panels are seen under small angles, for which six terms of the series are exact to rounding, and far quicker. */
    private static final double SERIES = 0.08;

    private static final double THIRD = 1.0 / 3;
    private static final double FIFTH = 1.0 / 5;
    private static final double SEVENTH = 1.0 / 7;
    private static final double NINTH = 1.0 / 9;
    private static final double ELEVENTH = 1.0 / 11;

    private Arc() {}

    /** Angle (rad), -pi to pi, of a direction with these sine and cosine in proportion; 0 for none. */
    static double angle(double sine, double cosine) {
        double ratio = sine / cosine;
        if (cosine > 0 && Math.abs(ratio) < SERIES) {
            double square = ratio * ratio;
            return ratio
                    * (1
                            - square
                                    * (THIRD
                                            - square
                                                    * (FIFTH
                                                            - square
                                                                    * (SEVENTH
                                                                            - square * (NINTH - square * ELEVENTH)))));
        }
        return sine == 0 && cosine >= 0 ? 0 : StrictMath.atan2(sine, cosine);
    }
}
