package trimwright.weather;

import trimwright.chance.RandomStream;

/**
 * Slow swings of direction and strength, minutes long, that come down the wind. Three waves each, with periods drawn from 2.5
 * to 14 minutes: chosen (common practice, no source: wind over a bay oscillates in some minutes by several degrees).
 */
final class WindShifts {
    private static final int WAVES = 3;

    private final WaveSum direction;
    private final WaveSum strength;

    /**
     * @param swing standard deviation of direction (rad)
     * @param surge standard deviation of speed over the mean (-)
     * @param speed mean wind (m/s)
     */
    WindShifts(double swing, double surge, double speed, RandomStream random) {
        direction = waves(swing, speed, random);
        strength = waves(surge, speed, random);
    }

    /** Veer, clockwise (rad). */
    double direction(double alongWind, double crossWind) {
        return direction.at(alongWind, crossWind);
    }

    /** Speed over the mean, less one (-). */
    double strength(double alongWind, double crossWind) {
        return strength.at(alongWind, crossWind);
    }

    private static WaveSum waves(double spread, double speed, RandomStream random) {
        double[] amplitude = new double[WAVES];
        double[] along = new double[WAVES];
        double[] across = new double[WAVES];
        double[] phase = new double[WAVES];
        for (int i = 0; i < WAVES; i++) {
            double period = 150 * StrictMath.pow(840.0 / 150, (i + random.uniform()) / WAVES);
            amplitude[i] = spread * StrictMath.sqrt(2.0 / WAVES);
            along[i] = 2 * Math.PI / (period * speed);
            // Fronts lie within 40 degrees of square to the wind: chosen.
            across[i] = along[i] * random.uniform(-0.84, 0.84);
            phase[i] = 2 * Math.PI * random.uniform();
        }
        return new WaveSum(amplitude, along, across, phase);
    }
}
