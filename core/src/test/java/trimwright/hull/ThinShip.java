package trimwright.hull;

/**
 * Michell's wave resistance of a hull with parabolic waterlines and frames (beam twice the draft), by direct summation:
 * test code that calls nothing of the model.
 */
final class ThinShip {
    private static final double G = 9.80665;

    private ThinShip() {}

    /** Wave resistance over dynamic pressure and the root of volume times length (-), for a length of 14 m. */
    static double waveCoefficient(double slenderness, double froude) {
        double length = 14;
        double volume = Math.pow(length / slenderness, 3);
        double draft = Math.sqrt(volume * 9 / 8 / length);
        double beam = 2 * draft;
        double speed = froude * Math.sqrt(G * length);
        double k0 = G / (speed * speed);
        int n = 4000;
        double end = 5;
        double sum = 0;
        for (int i = 0; i <= n; i++) {
            double lambda = Math.cosh(end * i / n);
            double p = 4 * beam / (length * length) * along(k0 * lambda, length) * down(k0 * lambda * lambda, draft);
            sum += (i == 0 || i == n ? 0.5 : 1) * p * p * lambda * lambda;
        }
        double resistance = 4 * G * G / (Math.PI * speed * speed) * sum * end / n; // over density
        return resistance / (0.5 * speed * speed * Math.sqrt(volume * length));
    }

    /** Integral of x sin(k x) from stern to bow. */
    private static double along(double k, double length) {
        double a = k * length / 2;
        return 2 * (Math.sin(a) / (k * k) - length / 2 * Math.cos(a) / k);
    }

    /** Integral of (1 - (z / T)^2) exp(-k z) from surface to keel. */
    private static double down(double k, double draft) {
        int n = 100;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double z = draft * (i + 0.5) / n;
            sum += (1 - z * z / (draft * draft)) * Math.exp(-k * z);
        }
        return sum * draft / n;
    }
}
