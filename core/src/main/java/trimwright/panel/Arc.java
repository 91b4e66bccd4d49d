package trimwright.panel;

/** Angles under which panels are seen. */
final class Arc {
    private Arc() {}

    /** Angle (rad), 0 to pi, of a direction with these sine and cosine in proportion; 0 for none. */
    static double subtended(double sine, double cosine) {
        return sine == 0 && cosine >= 0 ? 0 : Math.atan2(sine, cosine);
    }
}
