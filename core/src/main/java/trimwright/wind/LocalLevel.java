package trimwright.wind;

import java.util.Arrays;

/**
 * Kalman filter and fixed-interval (Rauch-Tung-Striebel) smoother of the local level model: what is observed is a level
 * plus white noise, and the level walks at random. Scalar recurrences with exact diffuse start, after Durbin and Koopman,
 * Time Series Analysis by State Space Methods, ch. 2 (from memory, not opened); checked against an independent
 * computation on the Nile flows. Missing observations (NaN) widen the variance and nothing else.
 *
 * @param observationVariance of the white noise, above zero
 * @param levelVariance of the walk in one step, zero or more
 */
public record LocalLevel(double observationVariance, double levelVariance) {
    public LocalLevel {
        if (!(observationVariance > 0) || !(levelVariance >= 0)) {
            throw new IllegalArgumentException(
                    "local level with variances " + observationVariance + " and " + levelVariance);
        }
    }

    /** Level and its variance, one per observation; NaN where nothing is known yet. */
    public record Estimate(double[] level, double[] variance) {}

    /** Best knowledge at each step from observations up to that step. */
    public Estimate filter(double[] observations) {
        int n = observations.length;
        double[] level = new double[n];
        double[] variance = new double[n];
        double a = Double.NaN;
        double p = Double.NaN;
        for (int t = 0; t < n; t++) {
            double y = observations[t];
            if (Double.isNaN(a)) {
                a = y;
                p = Double.isNaN(y) ? Double.NaN : observationVariance;
            } else {
                p += levelVariance;
                if (!Double.isNaN(y)) {
                    double gain = p / (p + observationVariance);
                    a += gain * (y - a);
                    p *= 1 - gain;
                }
            }
            level[t] = a;
            variance[t] = p;
        }
        return new Estimate(level, variance);
    }

    /** Best knowledge at each step from all observations. */
    public Estimate smooth(double[] observations) {
        Estimate filtered = filter(observations);
        int n = observations.length;
        double[] level = filtered.level().clone();
        double[] variance = filtered.variance().clone();
        for (int t = n - 2; t >= 0; t--) {
            if (Double.isNaN(level[t])) {
                break;
            }
            double predicted = filtered.variance()[t] + levelVariance;
            double gain = filtered.variance()[t] / predicted;
            level[t] += gain * (level[t + 1] - level[t]);
            variance[t] += gain * gain * (variance[t + 1] - predicted);
        }
        backToFirst(level, variance);
        return new Estimate(level, variance);
    }

    /** Before the first observation the level is that of the first, known the worse the further back. */
    private void backToFirst(double[] level, double[] variance) {
        int first = 0;
        while (first < level.length && Double.isNaN(level[first])) {
            first++;
        }
        if (first < level.length) {
            Arrays.fill(level, 0, first, level[first]);
            for (int t = first - 1; t >= 0; t--) {
                variance[t] = variance[t + 1] + levelVariance;
            }
        }
    }
}
