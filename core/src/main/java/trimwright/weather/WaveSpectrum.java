package trimwright.weather;

/**
 * How the energy of a growing wind sea is spread over frequency and direction: JONSWAP's shape with its mean peak (HASSELMANN-1973),
 * cosine squared about the wind. Valid for deep water. Left out: swell from elsewhere.
 */
final class WaveSpectrum {
    /** Height of the peak over that of a sea fully grown (-): mean of the measurements. */
    private static final double GAMMA = 3.3;

    /** Width of the peak below and above it (-). */
    private static final double NARROW = 0.07;

    private static final double WIDE = 0.09;

    private WaveSpectrum() {}

    /** Density (s) over angular frequency (rad/s), up to a factor, for a peak there (rad/s). */
    static double density(double omega, double peak) {
        double ratio = peak / omega;
        double width = omega > peak ? WIDE : NARROW;
        double off = (omega / peak - 1) / width;
        return StrictMath.pow(ratio, 5)
                / peak
                * StrictMath.exp(-1.25 * StrictMath.pow(ratio, 4))
                * StrictMath.pow(GAMMA, StrictMath.exp(-0.5 * off * off));
    }

    /** Share (0 to 1) of the energy that travels to the left of that angle from the wind (rad, within a quarter of a turn). */
    static double shareLeftOf(double angle) {
        return 0.5 + angle / Math.PI + StrictMath.sin(2 * angle) / (2 * Math.PI);
    }

    /** Angle from the wind (rad) to whose left that share of the energy travels. */
    static double angleOf(double share) {
        double low = -Math.PI / 2;
        double high = Math.PI / 2;
        while (high - low > 1e-12) {
            double middle = 0.5 * (low + high);
            if (shareLeftOf(middle) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }
}
