package trimwright.target;

/** Cubic between two values with given slopes. */
final class Hermite {
    private Hermite() {}

    /**
     * @param y0 value at 0
     * @param m0 slope at 0, per length of the interval
     * @param y1 value at 1
     * @param m1 slope at 1, per length of the interval
     * @param s place, 0 to 1
     */
    static double value(double y0, double m0, double y1, double m1, double s) {
        double r = 1 - s;
        return r * r * ((1 + 2 * s) * y0 + s * m0) + s * s * ((1 + 2 * r) * y1 - r * m1);
    }
}
