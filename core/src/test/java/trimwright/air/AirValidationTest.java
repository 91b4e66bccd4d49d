package trimwright.air;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

class AirValidationTest {
    @Test
    @ValidatedAgainst(
            source = "CIPM-2007",
            where = "equation recomputed independently at six states, 400 ppm",
            tolerance = "2e-5 kg/m3: the reference's rounding")
    void densityOfMoistAir() {
        double[][] rows = {
            {20, 101325, 0.5, 1.19931},
            {15, 101325, 0, 1.22552},
            {25, 101325, 0.8, 1.17314},
            {30, 100000, 0.7, 1.13661},
            {10, 102000, 0.6, 1.25212},
            {5, 101325, 1, 1.26560}
        };
        for (double[] row : rows) {
            assertEquals(
                    row[3],
                    MoistAir.density(row[0] + 273.15, row[1], row[2], MoistAir.CARBON_DIOXIDE),
                    2e-5,
                    row[0] + " C");
        }
    }

    @Test
    @ValidatedAgainst(
            source = "NACA-TR-664",
            where = "dry air at 15 C and 760 mm: 1.2255",
            tolerance = "1e-4: printed digits")
    void densityOfDryAirInAnOldReport() {
        assertEquals(1.2255, MoistAir.density(288.15, 101325, 0, MoistAir.CARBON_DIOXIDE), 1e-4);
    }

    @Test
    @ValidatedAgainst(source = "CIPM-2007", where = "saturation pressure at 20 C", tolerance = "0.01 Pa: rounding")
    void saturationPressure() {
        assertEquals(2339.16, MoistAir.saturationPressure(293.15), 0.02);
    }

    @Test
    @ValidatedAgainst(
            source = "ISA-1976",
            where = "standard atmosphere at sea level: density 1.2250, viscosity 1.789e-5, kinematic 1.461e-5",
            tolerance = "5e-4: the standard's dry air has another molar mass; printed digits for viscosity")
    void standardAtmosphere() {
        assertEquals(1.2250, AirState.STANDARD.density(), 1e-3);
        assertEquals(1.789e-5, MoistAir.viscosity(288.15), 1e-8);
        assertEquals(1.461e-5, AirState.STANDARD.kinematicViscosity(), 1.5e-8);
    }

    @Test
    @ValidatedAgainst(
            source = "CHARNOCK",
            where = "log law with Charnock roughness solved: friction speed, roughness, speed ratios",
            tolerance = "1e-3, as the table states; computed there with g 9.81")
    void windProfileOverTheSea() {
        double[][] rows = {
            // charnock, wind at 10 m, friction speed, roughness, ratios at 3, 20, 25 m (NaN: not listed)
            {.011, 10, .3589, 1.444e-4, .8920, 1.0622, 1.0822},
            {.012, 10, .3623, 1.606e-4, .8909, 1.0628, 1.0830},
            {.0144, 10, .3698, 2.008e-4, .8887, 1.0641, 1.0847},
            {.018, 10, .3795, 2.642e-4, .8858, 1.0658, 1.0869},
            {.011, 5, .1561, 2.733e-5, Double.NaN, 1.0541, Double.NaN},
            {.011, 15, .5913, 3.921e-4, Double.NaN, 1.0683, Double.NaN}
        };
        for (double[] row : rows) {
            WindProfile profile = WindProfile.overSea(row[1], row[0]);
            assertEquals(row[2], profile.frictionSpeed(), 1e-3 * row[2]);
            assertEquals(row[3], profile.roughness(), 2e-3 * row[3]);
            assertEquals(row[1], profile.speedAt(10), 1e-12 * row[1]);
            double[] heights = {3, 20, 25};
            for (int k = 0; k < 3; k++) {
                if (!Double.isNaN(row[4 + k])) {
                    assertEquals(row[4 + k], profile.speedAt(heights[k]) / row[1], 1e-4);
                }
            }
        }
    }

    @Test
    @ValidatedAgainst(
            source = "GARRATT-1977",
            where = "neutral drag coefficient at 10 m/s: 0.51 V^0.46 e-3 and (0.75 + 0.067 V) e-3",
            tolerance = "6 percent of both fits for a = 0.0144, the reference's statement with k 0.41")
    void dragOfTheSeaSurfaceAtTenMetresASecond() {
        double u = WindProfile.overSea(10, 0.0144).frictionSpeed();
        double drag = u * u / 100;
        assertEquals(1.420e-3, drag, 0.06 * 1.420e-3);
        assertEquals(1.471e-3, drag, 0.08 * 1.471e-3);
    }
}
