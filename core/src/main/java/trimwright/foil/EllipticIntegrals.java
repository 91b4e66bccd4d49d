package trimwright.foil;

/**
 * Complete elliptic integrals by the arithmetic-geometric mean.
 *
 * @param first K(m)
 * @param lossRatio (K(m) - E(m)) / K(m)
 */
record EllipticIntegrals(double first, double lossRatio) {
    /** @param m square of the modulus, in [0, 1) */
    static EllipticIntegrals of(double m) {
        double a = 1;
        double b = Math.sqrt(1 - m);
        double sum = m / 2;
        double weight = 0.5;
        while (a - b > 1e-15 * a) {
            double c = (a - b) / 2;
            double mean = (a + b) / 2;
            b = Math.sqrt(a * b);
            a = mean;
            weight *= 2;
            sum += weight * c * c;
        }
        return new EllipticIntegrals(Math.PI / (2 * a), sum);
    }

    /** K - E. */
    double firstLessSecond() {
        return first * lossRatio;
    }

    /** E. */
    double second() {
        return first * (1 - lossRatio);
    }
}
