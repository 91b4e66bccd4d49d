package trimwright.motion;

/**
 * A vector about the body's axes: rates of turning (rad/s), moments (N m) or angular momentum (N m s).
 *
 * @param p about forward
 * @param q about starboard
 * @param r about down
 */
record Spin(double p, double q, double r) {
    Spin plus(Spin other) {
        return new Spin(p + other.p, q + other.q, r + other.r);
    }

    Spin times(double factor) {
        return new Spin(factor * p, factor * q, factor * r);
    }

    /** The cross product of this with the other. */
    Spin cross(Spin other) {
        return new Spin(q * other.r - r * other.q, r * other.p - p * other.r, p * other.q - q * other.p);
    }
}
