package trimwright.wind;

/**
 * How gusty it was: the standard deviation of the wind's speed over its mean, from means of a second. What sensors scatter counts,
 * so that it is rather too large; gusts shorter than a second are averaged away.
 */
public final class WindSpread {
    /** Fewest seconds that tell (chosen: a leg of two minutes; how near that comes to the longer truth was not looked at). */
    private static final int FEWEST = 120;

    private WindSpread() {}

    /** Turbulence (-) of a stretch of a track, readings in turns left out; NaN where too little is known. */
    public static double of(WindTrack wind, int from, int to) {
        SessionClock clock = wind.clock();
        boolean[] leftOut = WindSmoothing.leftOut(clock, wind.toArray(Quantity.RATE_OF_TURN));
        int second = clock.steps(1);
        int seconds = Math.max(0, (to - from) / second);
        double[] north = new double[seconds];
        double[] east = new double[seconds];
        for (int s = 0; s < seconds; s++) {
            double sumNorth = 0;
            double sumEast = 0;
            int count = 0;
            for (int i = from + s * second; i < from + (s + 1) * second; i++) {
                double tws = wind.get(Quantity.RAW_TWS, i);
                double twd = wind.get(Quantity.RAW_TWD, i);
                if (!leftOut[i] && !Double.isNaN(tws) && !Double.isNaN(twd)) {
                    sumNorth += tws * StrictMath.cos(twd);
                    sumEast += tws * StrictMath.sin(twd);
                    count++;
                }
            }
            north[s] = count == 0 ? Double.NaN : sumNorth / count;
            east[s] = count == 0 ? Double.NaN : sumEast / count;
        }
        return of(north, east, seconds, FEWEST);
    }

    /** Turbulence (-) of the first so many seconds, each a mean of the wind (m/s), NaN where not known; NaN where fewer than that are. */
    static double of(double[] north, double[] east, int seconds, int fewest) {
        double sum = 0;
        double squares = 0;
        int count = 0;
        for (int i = 0; i < seconds; i++) {
            double one = StrictMath.hypot(north[i], east[i]);
            if (!Double.isNaN(one)) {
                sum += one;
                squares += one * one;
                count++;
            }
        }
        double mean = sum / count;
        return count < fewest ? Double.NaN : Math.sqrt(Math.max(0, squares / count - mean * mean)) / mean;
    }
}
