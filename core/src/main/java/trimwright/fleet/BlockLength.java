package trimwright.fleet;

import java.util.List;

/** How long a stretch of time must be to count as independent of the next. */
final class BlockLength {
    /** Never shorter (s). */
    static final double LEAST = 120;

    /** Nor longer: a day must give more than a few (s); chosen. */
    private static final double MOST = 360;

    /** Times the time scale over which boats' differences remember themselves: chosen, so that a tenth of it is left. */
    private static final double SCALES = 4;

    private BlockLength() {}

    /** From boats' residual progress: one value a second each, NaN where a boat was not compared (s). */
    static double of(List<double[]> residuals) {
        double scale = 0;
        double weight = 0;
        for (double[] residual : residuals) {
            int lags = (int) MOST;
            double zero = covariance(residual, 0);
            if (!(zero > 0)) {
                continue;
            }
            double sum = 0.5;
            for (int lag = 1; lag < lags; lag++) {
                double share = covariance(residual, lag) / zero;
                if (!(share > 0)) {
                    break;
                }
                sum += share;
            }
            scale += sum;
            weight++;
        }
        double length = weight == 0 ? LEAST : SCALES * scale / weight;
        return Math.max(LEAST, Math.min(MOST, 60 * Math.ceil(length / 60)));
    }

    private static double covariance(double[] residual, int lag) {
        double sum = 0;
        int count = 0;
        for (int i = lag; i < residual.length; i++) {
            double product = residual[i] * residual[i - lag];
            if (!Double.isNaN(product)) {
                sum += product;
                count++;
            }
        }
        return count < 30 ? Double.NaN : sum / count;
    }
}
