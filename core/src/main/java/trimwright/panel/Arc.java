package trimwright.panel;

/** Angles under which panels are seen. */
final class Arc {
    /** Most panels are seen under small angles, for which six terms of the series are exact to rounding, and far quicker. */
    private static final double SERIES = 0.08;

    private Arc() {}

    /** Angle (rad), 0 to pi, of a direction with these sine and cosine in proportion; 0 for none. */
    static double subtended(double sine, double cosine) {
        double ratio = sine / cosine;
        if (cosine > 0 && ratio < SERIES) {
            double square = ratio * ratio;
            return ratio
                    * (1
                            - square
                                    * (1.0 / 3
                                            - square
                                                    * (1.0 / 5
                                                            - square * (1.0 / 7 - square * (1.0 / 9 - square / 11)))));
        }
        return sine == 0 && cosine >= 0 ? 0 : StrictMath.atan2(sine, cosine);
    }
}
