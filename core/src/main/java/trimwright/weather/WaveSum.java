package trimwright.weather;

/**
 * A frozen random field over the plane as a sum of cosines, each with its own two wave numbers. Reading it costs one cosine
 * a wave and needs no memory of earlier readings, so that any boat may ask for any place and time in any order.
 */
final class WaveSum {
    private final double[] amplitude;
    private final double[] along;
    private final double[] across;
    private final double[] phase;

    /**
     * @param amplitude of each wave, in the unit of the field; variance is half the sum of squares
     * @param along wave number in the direction of the mean wind (rad/m)
     * @param across wave number across the mean wind (rad/m)
     * @param phase at the origin (rad)
     */
    WaveSum(double[] amplitude, double[] along, double[] across, double[] phase) {
        this.amplitude = amplitude.clone();
        this.along = along.clone();
        this.across = across.clone();
        this.phase = phase.clone();
    }

    /** Value at a place carried with the air: metres along and across the mean wind. */
    double at(double alongWind, double crossWind) {
        double sum = 0;
        for (int i = 0; i < amplitude.length; i++) {
            sum += amplitude[i] * StrictMath.cos(along[i] * alongWind + across[i] * crossWind + phase[i]);
        }
        return sum;
    }

    /** Variance of the field over all the plane. */
    double variance() {
        double sum = 0;
        for (double a : amplitude) {
            sum += a * a / 2;
        }
        return sum;
    }
}
