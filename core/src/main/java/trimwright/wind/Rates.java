package trimwright.wind;

import trimwright.units.Angles;

/** Rates of change of an angle: the slope of the least-squares line through the samples around each instant. */
final class Rates {
    private Rates() {}

    /**
     * Slope (rad/s) over {@code half} samples to either side, following the angle from sample to sample; NaN where a
     * sample is missing from the window.
     */
    static double[] of(double[] angles, int half, double step) {
        double[] rates = new double[angles.length];
        for (int i = 0; i < angles.length; i++) {
            rates[i] = slope(angles, Math.max(0, i - half), Math.min(angles.length - 1, i + half), step);
        }
        return rates;
    }

    private static double slope(double[] angles, int from, int to, double step) {
        double middle = (to - from) / 2.0;
        double way = 0;
        double sum = 0;
        double weight = 0;
        for (int i = from; i <= to; i++) {
            if (i > from) {
                way += Angles.difference(angles[i], angles[i - 1]);
            }
            double x = (i - from - middle) * step;
            sum += x * way;
            weight += x * x;
        }
        return weight > 0 ? sum / weight : Double.NaN;
    }
}
