package trimwright.setup;

import trimwright.weather.TurbulenceSpectrum;

/**
 * Gusts about a mean wind as a Gaussian process with Kaimal's spectrum at 10 m, scaled so that its largest mean of 3 s in 10 min
 * is what the gust factor says. Spectral moments of the moving mean give the rate of passing a height (Rice) and the expected
 * largest (Cartwright and Longuet-Higgins, Davenport). Leaves out that strong gusts over water are rarer or longer than a Gaussian
 * process has them, squalls, and the change of gusts with height.
 */
public final class GustProcess {
    /** Length of a gust (s): World Meteorological Organization, TD-1555, 2010. */
    static final double GUST = 3;

    /** Over which the largest gust is taken (s): the same. */
    static final double PERIOD = 600;

    /** Mean of the wind that a boat's speed follows (s); chosen: about what she takes to gather most of her speed. */
    static final double FOLLOWED = 20;

    /** Euler and Mascheroni's constant (-), exact to double precision. */
    private static final double EULER = 0.5772156649015329;

    /** Metres above the water that winds are given for. */
    private static final double HEIGHT = 10;

    /** Lowest frequency of the integrals (Hz); chosen: below it lies under 1e-3 of the variance. */
    private static final double LOWEST = 1e-5;

    /** Shortest wave of air (m); chosen, as {@code weather} does: a wing of this size averages over shorter ones. */
    private static final double SHORTEST = 6;

    private static final int STEPS = 1500;

    private final double sigma;
    private final double rate;
    private final double followed;
    private final double turbulence;

    private GustProcess(double sigma, double rate, double followed, double turbulence) {
        this.turbulence = turbulence;
        this.sigma = sigma;
        this.rate = rate;
        this.followed = followed;
    }

    /**
     * The process of a mean wind at 10 m (m/s).
     *
     * @param gustFactor largest mean of 3 s in 10 min over the mean wind (-), above 1
     */
    public static GustProcess of(double gustFactor, double meanWind) {
        if (!(gustFactor > 1) || !(meanWind > 0)) {
            throw new IllegalArgumentException("no gusts of factor " + gustFactor + " in a wind of " + meanWind);
        }
        double gust = moment(meanWind, GUST, 0);
        double rate = StrictMath.sqrt(moment(meanWind, GUST, 2) / gust);
        double sigma = (gustFactor - 1) * meanWind / peakFactor(rate * PERIOD);
        double slow = StrictMath.sqrt(moment(meanWind, FOLLOWED, 0) / gust);
        return new GustProcess(sigma, rate, slow * sigma, sigma / StrictMath.sqrt(gust) / meanWind);
    }

    /**
     * Expected largest of a Gaussian process over its standard deviation (-).
     *
     * @param upcrossings of the mean in that time (-), e or more
     */
    public static double peakFactor(double upcrossings) {
        double root = StrictMath.sqrt(2 * StrictMath.log(upcrossings));
        return root + EULER / root;
    }

    /** Standard deviation of the mean of 3 s (m/s). */
    public double sigma() {
        return sigma;
    }

    /** Standard deviation of the wind itself over its mean (-). */
    public double turbulence() {
        return turbulence;
    }

    /** How often the mean of 3 s passes its own mean upward (1/s). */
    public double rate() {
        return rate;
    }

    /** Standard deviation of the wind that a boat's speed follows (m/s). */
    public double followedSigma() {
        return followed;
    }

    /** How often a gust passes the mean wind by that rise (m/s, 0 or more): Rice's formula (1/s). */
    public double ratePassing(double rise) {
        double y = Math.max(0, rise) / sigma;
        return rate * StrictMath.exp(-0.5 * y * y);
    }

    /** Moment of the spectrum of unit variance, seen through a moving mean of that length (s): in Hz to the order. */
    private static double moment(double meanWind, double mean, int order) {
        double lambda = TurbulenceSpectrum.lambda(HEIGHT);
        double step = StrictMath.log(meanWind / SHORTEST / LOWEST) / STEPS;
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double f = LOWEST * StrictMath.exp((i + 0.5) * step);
            double x = Math.PI * f * mean;
            double filter = StrictMath.sin(x) / x;
            double power = order == 0 ? 1 : f * f;
            sum += power * TurbulenceSpectrum.KAIMAL.alongWind(f, 1, lambda, meanWind) * filter * filter * f * step;
        }
        return sum;
    }
}
