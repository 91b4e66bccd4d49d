package trimwright.weather;

import trimwright.arithmetic.Exponential;
import trimwright.arithmetic.FastCircle;
import trimwright.chance.RandomStream;
import trimwright.units.Units;
import trimwright.water.WaterMotion;
import trimwright.water.WaterPoint;

/**
 * A sea of short waves over a course: a sum of linear waves on deep water (Airy), drawn from {@link WaveSpectrum}. Same
 * specification and seed, same sea, whoever asks and in whatever order.
 *
 * <p>Frequencies stand in bins of equal ratio, one wave a bin, drawn inside the bin; the amplitude holds the bin's energy, so
 * that every drawn sea has the height asked. Under a crest the motion is that below the undisturbed surface moved up with the
 * surface (Wheeler's stretching, from memory). Left out: breaking, sharper crests, drift, current.
 */
public final class Sea {
    /** Waves: chosen; a bin then is 7 % wide, less than the peak. */
    private static final int WAVES = 24;

    /** Lowest and highest frequency over the peak's (-): chosen; above are 1 % of the energy, in waves shorter than a foil is wide. */
    private static final double LOWEST = 0.6;

    private static final double HIGHEST = 3;

    /** Steps in a bin's integral: chosen. */
    private static final int STEPS = 16;

    /** Golden section: steps of it spread neighbouring waves evenly over directions. */
    private static final double GOLDEN = 0.6180339887498949;

    private final double[] amplitude = new double[WAVES];
    private final double[] omega = new double[WAVES];
    private final double[] number = new double[WAVES];
    private final double[] towardsNorth = new double[WAVES];
    private final double[] towardsEast = new double[WAVES];
    private final double[] phase = new double[WAVES];

    public Sea(WaveSpec spec, long seed) {
        RandomStream random = RandomStream.of(seed, "waves");
        double peak = 2 * Math.PI / spec.period();
        double ratio = StrictMath.pow(HIGHEST / LOWEST, 1.0 / WAVES);
        double turned = random.uniform();
        double energy = 0;
        for (int i = 0; i < WAVES; i++) {
            double low = LOWEST * peak * StrictMath.pow(ratio, i);
            omega[i] = low * StrictMath.pow(ratio, random.uniform());
            number[i] = omega[i] * omega[i] / Units.G;
            double share = turned + i * GOLDEN;
            double towards = spec.from() + Math.PI + WaveSpectrum.angleOf(share - Math.floor(share));
            towardsNorth[i] = StrictMath.cos(towards);
            towardsEast[i] = StrictMath.sin(towards);
            phase[i] = 2 * Math.PI * random.uniform();
            double inBin = integral(low, low * ratio, peak);
            amplitude[i] = Math.sqrt(2 * inBin);
            energy += inBin;
        }
        double scale = spec.height() / 4 / Math.sqrt(energy);
        for (int i = 0; i < WAVES; i++) {
            amplitude[i] *= scale;
        }
    }

    private static double integral(double low, double high, double peak) {
        double width = (high - low) / STEPS;
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            sum += WaveSpectrum.density(low + (i + 0.5) * width, peak) * width;
        }
        return sum;
    }

    /** Waves in the sum. */
    int waves() {
        return WAVES;
    }

    /** Amplitude of a wave (m). */
    double amplitude(int wave) {
        return amplitude[wave];
    }

    /** Its angular frequency (rad/s). */
    double omega(int wave) {
        return omega[wave];
    }

    /** Its wave number (rad/m). */
    double number(int wave) {
        return number[wave];
    }

    /** Direction in which it travels, clockwise from north (rad), -pi to pi. */
    double towards(int wave) {
        return StrictMath.atan2(towardsEast[wave], towardsNorth[wave]);
    }

    /** The sea at a time (s from its zero). */
    public WaterMotion at(double time) {
        double[] now = new double[WAVES];
        for (int i = 0; i < WAVES; i++) {
            now[i] = phase[i] - omega[i] * time;
        }
        return new Instant(now);
    }

    private final class Instant implements WaterMotion {
        private final double[] now;

        Instant(double[] now) {
            this.now = now;
        }

        @Override
        public double elevation(double north, double east) {
            double sum = 0;
            for (int i = 0; i < WAVES; i++) {
                sum += amplitude[i] * FastCircle.cos(angle(i, north, east));
            }
            return sum;
        }

        @Override
        public WaterPoint at(double north, double east, double depth) {
            double[] angle = new double[WAVES];
            double[] cos = new double[WAVES];
            double below = depth;
            for (int i = 0; i < WAVES; i++) {
                angle[i] = angle(i, north, east);
                cos[i] = FastCircle.cos(angle[i]);
                below += amplitude[i] * cos[i];
            }
            double under = Math.max(0, below);
            double toNorth = 0;
            double toEast = 0;
            double up = 0;
            for (int i = 0; i < WAVES; i++) {
                double speed = amplitude[i] * omega[i] * Exponential.of(-number[i] * under);
                double along = speed * cos[i];
                toNorth += along * towardsNorth[i];
                toEast += along * towardsEast[i];
                up += speed * FastCircle.sin(angle[i]);
            }
            return new WaterPoint(below, toNorth, toEast, -up);
        }

        private double angle(int wave, double north, double east) {
            return number[wave] * (north * towardsNorth[wave] + east * towardsEast[wave]) + now[wave];
        }
    }
}
