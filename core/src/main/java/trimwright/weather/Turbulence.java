package trimwright.weather;

import java.util.function.DoubleUnaryOperator;
import trimwright.chance.RandomStream;

/**
 * Makes a {@link WaveSum} whose spectrum in time at a fixed place is a given one and whose coherence across the wind is that
 * of IEC 61400-1's exponential model, over height as to the side.
 *
 * <p>Frequencies stand in bins of equal ratio, one wave a bin, drawn inside the bin; the amplitude holds the bin's integral
 * of the spectrum. Taylor's frozen field gives the wave number along the wind, 2 pi f / V. The coherence
 * {@code exp(-gamma r)} is the mean of {@code cos(k r)} over a Cauchy distribution of k with scale gamma, so drawing the
 * crosswind wave number from it gives that coherence in the mean, exactly. The wave number over height is drawn so that both
 * together have Cauchy's distribution in the plane, whose mean of {@code cos(k . r)} is {@code exp(-gamma |r|)} in every
 * direction: given the one across, the other is Student's with two degrees of freedom. Left out: continuity of the air.
 */
final class Turbulence {
    /** Waves a component: chosen; 96 put the variance of a field within 1 % of the spectrum's. */
    private static final int WAVES = 96;
    /** Lowest frequency (Hz): chosen; slower change belongs to {@link WindShifts}. */
    private static final double LOWEST = 1.0 / 1200;
    /** Shortest wave along the wind (m): chosen; a wing of this size averages over shorter ones. */
    private static final double SHORTEST = 6;
    /** IEC 61400-1: decay and offset of the coherence. */
    private static final double DECAY = 12;

    private static final double OFFSET = 0.12;

    private Turbulence() {}

    /**
     * @param density one-sided spectrum over frequency (Hz)
     * @param lambda IEC's Lambda1 (m)
     * @param speed mean wind (m/s)
     * @param random for all that is seen at the reference height
     * @param overHeight for what differs over height
     */
    static WaveSum of(
            DoubleUnaryOperator density, double lambda, double speed, RandomStream random, RandomStream overHeight) {
        double[] amplitude = new double[WAVES];
        double[] along = new double[WAVES];
        double[] across = new double[WAVES];
        double[] up = new double[WAVES];
        double[] phase = new double[WAVES];
        double ratio = StrictMath.pow(speed / SHORTEST / LOWEST, 1.0 / WAVES);
        for (int i = 0; i < WAVES; i++) {
            double low = LOWEST * StrictMath.pow(ratio, i);
            double high = low * ratio;
            double frequency = low * StrictMath.pow(ratio, random.uniform());
            amplitude[i] = StrictMath.sqrt(2 * integral(density, i == 0 ? 0 : low, high));
            along[i] = 2 * Math.PI * frequency / speed;
            double gamma = decayRate(frequency, lambda, speed);
            double drawn = gamma * StrictMath.tan(Math.PI * (random.uniform() - 0.5));
            // Folded into the waves no shorter than SHORTEST: at distances of whole halves of it the mean is unchanged.
            across[i] = StrictMath.IEEEremainder(drawn, 4 * Math.PI / SHORTEST);
            double scale = StrictMath.sqrt((gamma * gamma + drawn * drawn) / 2);
            up[i] = StrictMath.IEEEremainder(scale * studentOfTwo(overHeight.uniform()), 4 * Math.PI / SHORTEST);
            phase[i] = 2 * Math.PI * random.uniform();
        }
        return new WaveSum(amplitude, along, across, up, phase);
    }

    /** Student's distribution with two degrees of freedom: the value (-) below which lies that share of it, which is not quite 0. */
    private static double studentOfTwo(double share) {
        double inside = Math.max(share, 1e-16);
        return (2 * inside - 1) / StrictMath.sqrt(2 * inside * (1 - inside));
    }

    /** Coherence across the wind falls as exp(-rate times distance): rate (1/m). */
    static double decayRate(double frequency, double lambda, double speed) {
        double a = frequency / speed;
        double b = OFFSET / (8.1 * lambda);
        return DECAY * StrictMath.sqrt(a * a + b * b);
    }

    private static double integral(DoubleUnaryOperator density, double low, double high) {
        int steps = 16;
        double width = (high - low) / steps;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += density.applyAsDouble(low + (i + 0.5) * width) * width;
        }
        return sum;
    }
}
