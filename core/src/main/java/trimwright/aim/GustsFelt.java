package trimwright.aim;

import trimwright.weather.FilteredGusts;

/**
 * The quick part of the wind's unrest, that a crew does not follow: {@link FilteredGusts} carried past the boat by the wind that she
 * feels, their mean over the wing's span (coherence of IEC 61400-1), what is slower than the crew's answer taken out (first order),
 * what is shorter than matters averaged away. Leaves out gusts from the side, and hands that are late or tired.
 */
public final class GustsFelt {
    /** Decay of the coherence (-): IEC 61400-1. */
    private static final double DECAY = 12;

    private GustsFelt() {}

    /**
     * What is felt at a place of sailing.
     *
     * @param deviation standard deviation of the wind (m/s)
     * @param apparentWind that carries the gusts past (m/s)
     * @param span of the wing (m)
     * @param answer time constant with which the crew follows (s)
     * @param shortest gusts are averaged over that time (s); 0: not at all
     */
    public static FilteredGusts of(double deviation, double apparentWind, double span, double answer, double shortest) {
        return FilteredGusts.of(
                deviation,
                apparentWind,
                f -> overSpan(DECAY * f * span / apparentWind)
                        * notFollowed(2 * Math.PI * f * answer)
                        * FilteredGusts.mean(f, shortest));
    }

    /** Share of the variance in a mean over a line whose coherence falls as exp(-x) from end to end. */
    private static double overSpan(double x) {
        return x < 1e-3 ? 1 - x / 3 : 2 * (x - 1 + StrictMath.exp(-x)) / (x * x);
    }

    private static double notFollowed(double x) {
        return x * x / (1 + x * x);
    }
}
