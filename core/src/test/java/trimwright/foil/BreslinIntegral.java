package trimwright.foil;

/**
 * Drag factor of a foil with elliptic load under the surface, by direct summation of Breslin's integral: test code that
 * calls nothing of the model.
 */
final class BreslinIntegral {
    private BreslinIntegral() {}

    static double dragFactor(double span, double depth, double speed) {
        double beta = 9.80665 * span / (speed * speed);
        double lambda = 2 * depth / span;
        return 1 - biplane(lambda) + 8 * waves(lambda, beta);
    }

    /** Over theta in the source; here u = tan theta = e^s, which spreads the peak at either end. */
    private static double waves(double lambda, double beta) {
        double from = Math.log(1e-5);
        double to = 0.5 * Math.log(45 / (lambda * beta) + 1);
        int n = 3000;
        double sum = 0;
        for (int i = 0; i <= n; i++) {
            double s = from + (to - from) * i / n;
            double u = Math.exp(s);
            double root = Math.sqrt(1 + u * u);
            double j = besselOne(0.5 * beta * u * root);
            double value = j * j * Math.exp(-lambda * beta * root * root) * root / u;
            sum += value * (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2);
        }
        return sum * (to - from) / n / 3;
    }

    /** Bessel function of order one from its integral over half a period. */
    private static double besselOne(double x) {
        int n = 40 + (int) (2 * Math.abs(x));
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double tau = Math.PI * (i + 0.5) / n;
            sum += Math.cos(tau - x * Math.sin(tau));
        }
        return sum / n;
    }

    /** Prandtl's factor with K - E = m times the integral of sin^2 / sqrt(1 - m sin^2), substituted to be smooth. */
    static double biplane(double lambda) {
        double m = 1 / (1 + lambda * lambda);
        int n = 20_000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double phi = Math.PI / 2 * (i + 0.5) / n;
            double sin = Math.sin(phi);
            sum += sin * sin / Math.sqrt(1 - m * sin * sin);
        }
        double firstLessSecond = m * sum * Math.PI / 2 / n;
        return 1 - 4 / Math.PI * lambda * Math.sqrt(1 + lambda * lambda) * firstLessSecond;
    }
}
