package trimwright.aim;

import trimwright.weather.TurbulenceSpectrum;

/**
 * The quick part of the wind's unrest, that a crew does not follow: a Gaussian process with Kaimal's spectrum, carried past the boat
 * by the wind that she feels (Taylor), its mean over the wing's span (coherence of IEC 61400-1), what is slower than the crew's
 * answer taken out (first order), what is shorter than matters averaged away. Rice's formula gives how often it passes a rise.
 * Leaves out squalls, that gusts over water are not quite Gaussian, gusts from the side, and hands that are late or tired.
 */
public final class GustsFelt {
    /** Metres above the water that the spectrum is taken at; about the middle of a wing. */
    private static final double HEIGHT = 10;

    /** Decay of the coherence (-): IEC 61400-1. */
    private static final double DECAY = 12;

    /** Lowest frequency of the integrals (Hz); chosen: a crew follows all below. */
    private static final double LOWEST = 1e-4;

    /** Shortest wave of air (m); chosen, as in {@code setup}. */
    private static final double SHORTEST = 6;

    private static final int STEPS = 600;

    private final double sigma;
    private final double rate;

    private GustsFelt(double sigma, double rate) {
        this.sigma = sigma;
        this.rate = rate;
    }

    /**
     * What is felt at a place of sailing.
     *
     * @param deviation standard deviation of the wind (m/s)
     * @param apparentWind that carries the gusts past (m/s)
     * @param span of the wing (m)
     * @param answer time constant with which the crew follows (s)
     * @param shortest gusts are averaged over that time (s); 0: not at all
     */
    public static GustsFelt of(double deviation, double apparentWind, double span, double answer, double shortest) {
        double lambda = TurbulenceSpectrum.lambda(HEIGHT);
        double step = StrictMath.log(apparentWind / SHORTEST / LOWEST) / STEPS;
        double variance = 0;
        double second = 0;
        for (int i = 0; i < STEPS; i++) {
            double f = LOWEST * StrictMath.exp((i + 0.5) * step);
            double power = TurbulenceSpectrum.KAIMAL.alongWind(f, deviation, lambda, apparentWind)
                    * overSpan(DECAY * f * span / apparentWind)
                    * notFollowed(2 * Math.PI * f * answer)
                    * averaged(Math.PI * f * shortest)
                    * f
                    * step;
            variance += power;
            second += f * f * power;
        }
        return new GustsFelt(StrictMath.sqrt(variance), StrictMath.sqrt(second / variance));
    }

    /** Share of the variance in a mean over a line whose coherence falls as exp(-x) from end to end. */
    private static double overSpan(double x) {
        return x < 1e-3 ? 1 - x / 3 : 2 * (x - 1 + StrictMath.exp(-x)) / (x * x);
    }

    private static double notFollowed(double x) {
        return x * x / (1 + x * x);
    }

    private static double averaged(double x) {
        double filter = x == 0 ? 1 : StrictMath.sin(x) / x;
        return filter * filter;
    }

    /** Standard deviation of what is felt (m/s). */
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
}
