package trimwright.weather;

import trimwright.arithmetic.FastCircle;

/**
 * A frozen random field over the plane and over height as a sum of cosines, each with its own three wave numbers. Reading it
 * costs one cosine a wave and needs no memory of earlier readings, so that any boat may ask for any place and time in any order.
 */
final class WaveSum {
    /** Metres from one height of {@link #column} to the next: the shortest wave of the turbulence. */
    static final double SPACING = 6;

    private final double[] amplitude;
    private final double[] along;
    private final double[] across;
    private final double[] phase;
    private final double[] cosUp;
    private final double[] sinUp;

    /** One that is the same at every height; the rest as below. */
    WaveSum(double[] amplitude, double[] along, double[] across, double[] phase) {
        this(amplitude, along, across, new double[amplitude.length], phase);
    }

    /**
     * @param amplitude of each wave, in the unit of the field; variance is half the sum of squares
     * @param along wave number in the direction of the mean wind (rad/m)
     * @param across wave number across the mean wind (rad/m)
     * @param up wave number over height (rad/m)
     * @param phase at the origin and the reference height (rad)
     */
    WaveSum(double[] amplitude, double[] along, double[] across, double[] up, double[] phase) {
        this.amplitude = amplitude.clone();
        this.along = along.clone();
        this.across = across.clone();
        this.phase = phase.clone();
        cosUp = new double[up.length];
        sinUp = new double[up.length];
        for (int i = 0; i < up.length; i++) {
            cosUp[i] = StrictMath.cos(up[i] * SPACING);
            sinUp[i] = StrictMath.sin(up[i] * SPACING);
        }
    }

    /** Value at a place carried with the air, at the reference height: metres along and across the mean wind. */
    double at(double alongWind, double crossWind) {
        double sum = 0;
        for (int i = 0; i < amplitude.length; i++) {
            sum += amplitude[i] * FastCircle.cos(along[i] * alongWind + across[i] * crossWind + phase[i]);
        }
        return sum;
    }

    /**
     * Values at heights {@link #SPACING} apart over the same place: one cosine and one sine a wave, turned from height to height.
     *
     * @param below how many heights stand below the reference; the value of that number is {@link #at}'s, to the bit
     * @param count of all heights
     */
    double[] column(double alongWind, double crossWind, int below, int count) {
        double[] sum = new double[count];
        for (int i = 0; i < amplitude.length; i++) {
            double angle = along[i] * alongWind + across[i] * crossWind + phase[i];
            double cos = amplitude[i] * FastCircle.cos(angle);
            double sin = amplitude[i] * FastCircle.sin(angle);
            sum[below] += cos;
            double c = cos;
            double s = sin;
            for (int k = below + 1; k < count; k++) {
                double turned = c * cosUp[i] - s * sinUp[i];
                s = c * sinUp[i] + s * cosUp[i];
                c = turned;
                sum[k] += c;
            }
            c = cos;
            s = sin;
            for (int k = below - 1; k >= 0; k--) {
                double turned = c * cosUp[i] + s * sinUp[i];
                s = s * cosUp[i] - c * sinUp[i];
                c = turned;
                sum[k] += c;
            }
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
