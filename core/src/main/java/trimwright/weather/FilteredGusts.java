package trimwright.weather;

import java.util.function.DoubleUnaryOperator;

/**
 * Gusts as somebody sees them: the along-wind unrest as a Gaussian process with Kaimal's spectrum at 10 m, carried past by a wind
 * (Taylor) and seen through a filter. Spectral moments give how often it passes a level (Rice) and its expected largest (Cartwright
 * and Longuet-Higgins, Davenport). The one model of gusts as a process: who asks brings the filter. Leaves out squalls and that
 * strong gusts over water are not quite Gaussian.
 */
public final class FilteredGusts {
    /** Euler and Mascheroni's constant (-), exact to double precision. */
    private static final double EULER = 0.5772156649015329;

    /** Metres above the water that winds are given for. */
    private static final double HEIGHT = 10;

    /** Lowest frequency of the integrals (Hz); chosen: below it lies under 1e-3 of the variance. */
    private static final double LOWEST = 1e-5;

    /** Shortest wave of air (m); chosen: a wing of this size averages over shorter ones. */
    private static final double SHORTEST = 6;

    /** Steps of the integrals per factor e of frequency; chosen: twice as many change no digit that is shown. */
    private static final int STEPS = 60;

    private final double sigma;
    private final double rate;

    private FilteredGusts(double sigma, double rate) {
        this.sigma = sigma;
        this.rate = rate;
    }

    /**
     * Gusts seen through a filter.
     *
     * @param deviation standard deviation of the wind itself (m/s)
     * @param carrier wind that carries the gusts past (m/s)
     * @param filter share of the power that is let through (-), by frequency (Hz)
     */
    public static FilteredGusts of(double deviation, double carrier, DoubleUnaryOperator filter) {
        double lambda = TurbulenceSpectrum.lambda(HEIGHT);
        double range = StrictMath.log(carrier / SHORTEST / LOWEST);
        int steps = (int) Math.ceil(STEPS * range);
        double step = range / steps;
        double variance = 0;
        double second = 0;
        for (int i = 0; i < steps; i++) {
            double f = LOWEST * StrictMath.exp((i + 0.5) * step);
            double power = TurbulenceSpectrum.KAIMAL.alongWind(f, deviation, lambda, carrier)
                    * filter.applyAsDouble(f)
                    * f
                    * step;
            variance += power;
            second += f * f * power;
        }
        return new FilteredGusts(StrictMath.sqrt(variance), StrictMath.sqrt(second / variance));
    }

    /** Share of the power at a frequency (Hz) in a running mean over a time (s); all of it where that is 0. */
    public static double mean(double frequency, double seconds) {
        double x = Math.PI * frequency * seconds;
        double filter = x == 0 ? 1 : StrictMath.sin(x) / x;
        return filter * filter;
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

    /** Standard deviation of what is seen (m/s). */
    public double sigma() {
        return sigma;
    }

    /** How often it passes its mean upward (1/s). */
    public double rate() {
        return rate;
    }

    /** How often it passes a rise (m/s, 0 or more) upward (1/s): Rice's formula. */
    public double ratePassing(double rise) {
        double y = rise / sigma;
        return rate * StrictMath.exp(-0.5 * y * y);
    }

    /** The rise (m/s) that is passed so often (1/s); 0 where even the mean is passed less often. */
    public double riseFor(double often) {
        return often >= rate ? 0 : sigma * StrictMath.sqrt(2 * StrictMath.log(rate / often));
    }

    /** The largest rise that a time (s) lets expect (m/s). */
    public double largestIn(double seconds) {
        return sigma * peakFactor(rate * seconds);
    }
}
