package trimwright.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;
import trimwright.water.WaterMotion;

class SeaValidationTest {
    private static final int SEEDS = 200;

    private static final WaveSpec SPEC = new WaveSpec(0.3, 3, Math.toRadians(30));

    @Test
    @ValidatedAgainst(
            source = "DNV-RP-C205",
            where = "a peak of 3.3 makes the energy 1 / (1 - 0.287 ln 3.3) of that without",
            tolerance = "1 %: the standard's fit")
    void theSpectrumHoldsTheEnergyOfTheStandard() {
        double peak = 2.1;
        double sum = 0;
        double step = 1e-4;
        for (double omega = 0.3 * peak; omega < 40 * peak; omega += step * peak) {
            sum += WaveSpectrum.density(omega, peak) * step * peak;
        }
        // Without a peak the integral of x^-5 exp(-1.25 x^-4) is a fifth.
        assertEquals(0.2 / (1 - 0.287 * StrictMath.log(3.3)), sum, 0.003);
    }

    @Test
    @ValidatedAgainst(
            source = "DNV-RP-C205",
            where = "from memory: mean period 0.8348 of the peak's, zero-upcrossing period 0.7775, for a peak of 3.3",
            tolerance = "1 %, after what ends with the spectrum at three times the peak's frequency: 2.4 % and 5.5 %")
    void drawnSeasHaveThePeriodsOfTheStandard() {
        double zero = 0;
        double first = 0;
        double second = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Sea sea = new Sea(SPEC, seed);
            for (int i = 0; i < sea.waves(); i++) {
                double energy = sea.amplitude(i) * sea.amplitude(i) / 2;
                zero += energy;
                first += energy * sea.omega(i);
                second += energy * sea.omega(i) * sea.omega(i);
            }
        }
        double kept = 1 - tail(0, 1);
        double mean = 0.8348 * kept / (1 - tail(1, 0.8348));
        double crossing = 0.7775 * Math.sqrt(kept / (1 - tail(2, 0.7775 * 0.7775)));
        assertEquals(mean, 2 * Math.PI * zero / first / SPEC.period(), 0.01 * mean);
        assertEquals(crossing, 2 * Math.PI * Math.sqrt(zero / second) / SPEC.period(), 0.01 * crossing);
    }

    /** Share of a moment of the spectrum beyond three times the peak, where it falls with the fifth power; moment as energy over it. */
    private static double tail(int moment, double energyOver) {
        double energy = 0.2 / (1 - 0.287 * StrictMath.log(3.3));
        return StrictMath.pow(3, moment - 4) / (4 - moment) * energyOver / energy;
    }

    /** Significant height is four standard deviations; what is read over plane and time has them. */
    @Test
    void whatIsReadHasTheHeightAsked() {
        double square = 0;
        int count = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Sea sea = new Sea(SPEC, seed);
            for (int k = 0; k < 200; k++) {
                double height = sea.at(7.3 * k).elevation(13.7 * k, -29.3 * k);
                square += height * height;
                count++;
            }
        }
        assertEquals(0.3, 4 * Math.sqrt(square / count), 0.03 * 0.3);
    }

    @Test
    void mostEnergyIsAtThePeak() {
        double peak = 2 * Math.PI / SPEC.period();
        for (int seed = 0; seed < SEEDS; seed++) {
            Sea sea = new Sea(SPEC, seed);
            int most = 0;
            for (int i = 1; i < sea.waves(); i++) {
                most = sea.amplitude(i) > sea.amplitude(most) ? i : most;
            }
            // One bin is 7 % wide.
            assertEquals(peak, sea.omega(most), 0.1 * peak);
        }
    }

    /** Cosine squared over half a turn has its mean along the wind at 8 / (3 pi), none across, none against. */
    @Test
    void theWavesGoWithTheWindAndSpreadAsCosineSquared() {
        double towards = SPEC.from() + Math.PI;
        double along = 0;
        double across = 0;
        double all = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Sea sea = new Sea(SPEC, seed);
            for (int i = 0; i < sea.waves(); i++) {
                double energy = sea.amplitude(i) * sea.amplitude(i) / 2;
                double off = sea.towards(i) - towards;
                assertTrue(StrictMath.cos(off) >= -1e-9);
                along += energy * StrictMath.cos(off);
                across += energy * StrictMath.sin(off);
                all += energy;
            }
        }
        assertEquals(8 / (3 * Math.PI), along / all, 0.02);
        assertEquals(0, across / all, 0.03);
    }

    /** Waves on deep water: omega squared is g k. A crest of a lone wave is found where its speed g / omega has carried it. */
    @Test
    void theWavesHaveTheDispersionOfDeepWater() {
        Sea sea = new Sea(SPEC, 3);
        for (int i = 0; i < sea.waves(); i++) {
            assertEquals(9.80665 * sea.number(i), sea.omega(i) * sea.omega(i), 1e-9);
        }
    }

    /** At the surface water moves as the surface does (linear: without the slope). */
    @Test
    void theSurfaceRisesAsItsWater() {
        Sea sea = new Sea(SPEC, 4);
        double dt = 1e-4;
        for (int k = 0; k < 50; k++) {
            double north = 11.1 * k;
            double east = -3.7 * k;
            double time = 0.9 * k;
            double rise = (sea.at(time + dt).elevation(north, east)
                            - sea.at(time - dt).elevation(north, east))
                    / (2 * dt);
            WaterMotion now = sea.at(time);
            double surface = -now.elevation(north, east);
            assertEquals(-rise, now.at(north, east, surface).down(), 1e-6);
            assertEquals(0, now.at(north, east, surface).depth(), 1e-12);
            // Above the surface that of the surface.
            assertEquals(-rise, now.at(north, east, surface - 0.5).down(), 1e-6);
        }
    }

    /** No water comes or goes, and none turns: held where waves are so low that their own height does not matter. */
    @Test
    void theFlowIsThatOfAPotential() {
        Sea sea = new Sea(new WaveSpec(1e-6, 3, 0.4), 5);
        WaterMotion now = sea.at(2);
        double h = 1e-3;
        double scale = 1e-6;
        for (int k = 0; k < 50; k++) {
            double n = 5.3 * k;
            double e = -8.9 * k;
            double d = 0.3 + 0.05 * k;
            double comes = (now.at(n + h, e, d).north() - now.at(n - h, e, d).north())
                    + (now.at(n, e + h, d).east() - now.at(n, e - h, d).east())
                    + (now.at(n, e, d + h).down() - now.at(n, e, d - h).down());
            double turns = (now.at(n + h, e, d).down() - now.at(n - h, e, d).down())
                    - (now.at(n, e, d + h).north() - now.at(n, e, d - h).north());
            assertEquals(0, comes / (2 * h) / scale, 1e-4);
            assertEquals(0, turns / (2 * h) / scale, 1e-4);
        }
    }

    /** The mean square of the vertical velocity at a depth is that of waves that each die out as exp(-k z). */
    @Test
    void theMotionDiesOutWithDepth() {
        Sea sea = new Sea(SPEC, 6);
        for (double depth : new double[] {0.5, 1, 2, 4}) {
            double expected = 0;
            for (int i = 0; i < sea.waves(); i++) {
                double speed = sea.amplitude(i) * sea.omega(i) * StrictMath.exp(-sea.number(i) * depth);
                expected += speed * speed / 2;
            }
            double square = 0;
            int count = 20_000;
            for (int k = 0; k < count; k++) {
                WaterMotion now = sea.at(3.1 * k);
                double down = now.at(0, 0, depth - now.elevation(0, 0)).down();
                square += down * down / count;
            }
            assertEquals(1, square / expected, 0.03, depth + " m");
        }
    }

    @Test
    void theSameSeedIsTheSameSeaToTheBit() {
        WaterMotion one = new Sea(SPEC, 9).at(33);
        WaterMotion other = new Sea(SPEC, 9).at(33);
        assertEquals(one.at(120, -45, 1.1), other.at(120, -45, 1.1));
        assertTrue(one.elevation(1, 2) != new Sea(SPEC, 10).at(33).elevation(1, 2));
    }
}
