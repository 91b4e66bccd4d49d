package trimwright.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WindFieldPropertyTest {
    private static WeatherSpec spec(TurbulenceSpectrum spectrum, double puff) {
        return new WeatherSpec(7.7, Math.toRadians(225), 10, 0.08, spectrum, Math.toRadians(4), 0.05, puff);
    }

    @Test
    void stillAirMovesWithTheMeanWind() {
        WindField field = new WindField(spec(TurbulenceSpectrum.KAIMAL, 0.15), 5);
        AirVelocity here = field.at(120, -40, 300);
        double dt = 17;
        double towards = Math.toRadians(45);
        AirVelocity later = field.at(120 + 7.7 * dt * Math.cos(towards), -40 + 7.7 * dt * Math.sin(towards), 300 + dt);
        assertEquals(here.north(), later.north(), 1e-9);
        assertEquals(here.east(), later.east(), 1e-9);
    }

    @Test
    void whereItIsAlikeEveryPlaceHasTheWindOfTheOrigin() {
        WeatherSpec carried = spec(TurbulenceSpectrum.KAIMAL, 0.15);
        WindField there = new WindField(carried, 5);
        WindField alike = new WindField(carried.with(WeatherSpec.Unrest.EVERYWHERE_ALIKE), 5);
        for (double time = 0; time < 600; time += 37) {
            assertEquals(there.at(0, 0, time), alike.at(0, 0, time));
            assertEquals(there.at(0, 0, time), alike.at(900, -2100, time));
        }
        assertNotEquals(there.at(900, -2100, 74), alike.at(900, -2100, 74));
    }

    @Test
    void withoutUnrestTheWindIsTheMeanEverywhere() {
        WindField field = new WindField(new WeatherSpec(9, 1.2, 10, 0, TurbulenceSpectrum.KAIMAL, 0, 0, 0), 5);
        AirVelocity air = field.at(1000, 2000, 3000);
        assertEquals(9, air.speed(), 1e-12);
        assertEquals(1.2, air.from(), 1e-12);
    }

    @Test
    void overALongTimeTheSpreadIsTheIntensityAsked() {
        for (TurbulenceSpectrum spectrum : TurbulenceSpectrum.values()) {
            double square = 0;
            int count = 0;
            for (int seed = 0; seed < 20; seed++) {
                WindField field = new WindField(new WeatherSpec(8, 0, 10, 0.1, spectrum, 0, 0, 0), seed);
                for (double t = 0; t < 20_000; t += 7) {
                    double along = -field.at(0, 0, t).north() - 8;
                    square += along * along;
                    count++;
                }
            }
            // 0.8 m/s, less the eddies shorter than the wing, which are left out: under a tenth of the variance.
            double sigma = Math.sqrt(square / count);
            assertTrue(sigma > 0.8 * Math.sqrt(0.90) && sigma < 0.8 * 1.01, spectrum + " " + sigma);
        }
    }

    @Test
    void puffsRaiseTheWindAndSeedsDiffer() {
        WindField calm = new WindField(spec(TurbulenceSpectrum.KAIMAL, 0), 5);
        WindField puffy = new WindField(spec(TurbulenceSpectrum.KAIMAL, 0.2), 5);
        WindField other = new WindField(spec(TurbulenceSpectrum.KAIMAL, 0.2), 6);
        double sum = 0;
        for (int i = 0; i < 4000; i++) {
            sum += puffy.at(0, 0, 13.0 * i).speed() - calm.at(0, 0, 13.0 * i).speed();
        }
        assertTrue(sum / 4000 > 0.02 * 7.7, "mean rise " + sum / 4000);
        assertNotEquals(puffy.at(0, 0, 10), other.at(0, 0, 10));
    }

    @Test
    void gustsDifferOverHeightAndNotAtTheReference() {
        WindField field = new WindField(spec(TurbulenceSpectrum.KAIMAL, 0.15), 5);
        double low = 0;
        double high = 0;
        int count = 4000;
        for (int i = 0; i < count; i++) {
            GustColumn gusts = field.column(0, 0, 13.0 * i).gusts();
            assertEquals(field.at(0, 0, 13.0 * i), field.column(0, 0, 13.0 * i).air());
            assertEquals(0, gusts.north(10), 0);
            assertEquals(0, gusts.east(10), 0);
            assertEquals(gusts.north(28), gusts.north(40), 0);
            assertEquals(0.5 * (gusts.east(16) + gusts.east(22)), gusts.east(19), 1e-12);
            low += gusts.north(4) * gusts.north(4) + gusts.east(4) * gusts.east(4);
            high += gusts.north(28) * gusts.north(28) + gusts.east(28) * gusts.east(28);
        }
        assertTrue(high > low && low > 0, low + " " + high);
    }

    @Test
    void everyHeightHasTheSameSpreadInTheMean() {
        double[] square = new double[5];
        for (int seed = 0; seed < 100; seed++) {
            WindField field = new WindField(new WeatherSpec(8, 0, 10, 0.1, TurbulenceSpectrum.KAIMAL, 0, 0, 0), seed);
            for (double t = 0; t < 20_000; t += 35) {
                double here = field.at(0, 0, t).north() + 8;
                GustColumn gusts = field.column(0, 0, t).gusts();
                for (int i = 0; i < 5; i++) {
                    double there = here + gusts.north(4 + 6 * i);
                    square[i] += there * there;
                }
            }
        }
        for (int i = 0; i < 5; i++) {
            assertEquals(1, square[i] / square[1], 0.02, "height " + i);
        }
    }

    @Test
    void steadyWindHasNoGustsOverHeight() {
        WindField field = new WindField(new WeatherSpec(9, 1.2, 10, 0, TurbulenceSpectrum.KAIMAL, 0, 0, 0), 5);
        assertEquals(0, field.column(100, 200, 300).gusts().north(28), 0);
    }
}
