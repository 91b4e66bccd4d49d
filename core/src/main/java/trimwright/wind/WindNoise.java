package trimwright.wind;

/**
 * How fast the wind itself shifts and how much the readings scatter about it, from the data: the mean square change of
 * the wind vector over a lag is, for a level that walks at random under white noise, a straight line in the lag. Its
 * slope gives the walk, its intercept the scatter. Lags of 10 to 60 s (chosen) put sensor noise and the small eddies,
 * which no boat can follow, into the scatter, and puffs and shifts into the walk.
 *
 * @param scatter variance of one reading about the level, per component (m2/s2)
 * @param walk variance that the level gains in one second, per component (m2/s3)
 */
public record WindNoise(double scatter, double walk) {
    private static final int SHORTEST_LAG = 10;
    private static final int LONGEST_LAG = 60;
    private static final int LAG_STEP = 5;

    /** Fewer pairs than this at a lag say nothing (chosen). */
    private static final int FEWEST_PAIRS = 30;

    /** Bounds of the smoothing time sqrt(scatter / walk) (s), chosen: a block, and the longest that a gust lasts. */
    private static final double SHORTEST_TIME = 2.0;

    private static final double LONGEST_TIME = 30.0;

    /** Where data are too few to tell: scatter 0.5 m/s and a smoothing time of 10 s (chosen). */
    private static final WindNoise WITHOUT_DATA = new WindNoise(0.25, 0.0025);

    /** From wind components on a clock of whole blocks, NaN where absent. */
    static WindNoise of(double[] north, double[] east, double blockSeconds) {
        double sumW = 0;
        double sumX = 0;
        double sumY = 0;
        double sumXx = 0;
        double sumXy = 0;
        for (int seconds = SHORTEST_LAG; seconds <= LONGEST_LAG; seconds += LAG_STEP) {
            int lag = (int) Math.round(seconds / blockSeconds);
            double sum = 0;
            int pairs = 0;
            for (int i = lag; i < north.length; i++) {
                double dn = north[i] - north[i - lag];
                double de = east[i] - east[i - lag];
                if (!Double.isNaN(dn) && !Double.isNaN(de)) {
                    sum += (dn * dn + de * de) / 2;
                    pairs++;
                }
            }
            if (pairs >= FEWEST_PAIRS) {
                double x = lag * blockSeconds;
                double y = sum / pairs;
                sumW += 1;
                sumX += x;
                sumY += y;
                sumXx += x * x;
                sumXy += x * y;
            }
        }
        double spread = sumW * sumXx - sumX * sumX;
        if (sumW < 3 || spread <= 0) {
            return WITHOUT_DATA;
        }
        double slope = (sumW * sumXy - sumX * sumY) / spread;
        double intercept = (sumY - slope * sumX) / sumW;
        return within(intercept / 2, slope, sumY / sumW / 2);
    }

    /** The nearest pair whose smoothing time is within bounds. */
    private static WindNoise within(double scatter, double walk, double halfChange) {
        if (!(halfChange > 0)) {
            return new WindNoise(1e-12, 1e-12 / (SHORTEST_TIME * SHORTEST_TIME));
        }
        double r = Math.max(scatter, 1e-3 * halfChange);
        double q = Math.max(walk, r / (LONGEST_TIME * LONGEST_TIME));
        return new WindNoise(Math.max(r, q * SHORTEST_TIME * SHORTEST_TIME), q);
    }

    /** Time over which the smoother averages, to either side (s). */
    public double smoothingTime() {
        return Math.sqrt(scatter / walk);
    }
}
