package trimwright.weather;

import trimwright.units.Units;

/**
 * A sea of short waves that the wind has raised.
 *
 * @param height significant wave height (m): four times the standard deviation of the surface
 * @param period of the spectrum's peak (s)
 * @param from direction from which the waves come, clockwise from north (rad): that of the wind
 */
public record WaveSpec(double height, double period, double from) {
    /**
     * Significant height over the length of a wave of the peak's period (-), where no period is given: chosen, that of a sea
     * that a wind of 14 kn raises to 0.3 m by the growth curves of JONSWAP, from memory (2.2 s).
     */
    public static final double STEEPNESS = 0.04;

    /** Steeper on that measure no sea of a period under 8 s is (-): DNV-RP-C205, from memory. */
    public static final double STEEPEST = 1.0 / 15;

    public WaveSpec {
        if (!(height > 0) || !(period >= leastPeriod(height)) || !(period < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("waves of " + height + " m, " + period + " s");
        }
    }

    /** Waves of that height (m) and the usual steepness. */
    public static WaveSpec of(double height, double from) {
        return new WaveSpec(height, periodAt(height, STEEPNESS), from);
    }

    /** Shortest period (s) that a sea of that height (m) can have. */
    public static double leastPeriod(double height) {
        return periodAt(height, STEEPEST);
    }

    /** Deep water: length is g T^2 / (2 pi). */
    private static double periodAt(double height, double steepness) {
        return Math.sqrt(2 * Math.PI * height / (Units.G * steepness));
    }
}
