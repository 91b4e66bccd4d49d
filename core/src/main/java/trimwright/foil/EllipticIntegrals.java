package trimwright.foil;

/** Complete elliptic integrals by the arithmetic-geometric mean; parameter m = k^2 in [0, 1). */
final class EllipticIntegrals {
    private EllipticIntegrals() {}

    /** K(m) - E(m). */
    static double firstLessSecond(double m) {
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
        return first(a) * sum;
    }

    /** E(m). */
    static double second(double m) {
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
        return first(a) * (1 - sum);
    }

    private static double first(double mean) {
        return Math.PI / (2 * mean);
    }
}
