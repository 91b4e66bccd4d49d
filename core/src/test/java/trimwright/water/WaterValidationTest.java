package trimwright.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

class WaterValidationTest {
    private static final double ICE = 273.15;

    @Test
    @ValidatedAgainst(
            source = "UNESCO-44",
            where = "table A3.1, check values: salinity 0 and 35, 5 and 25 degrees, 0 and 1000 bar",
            tolerance = "1e-5 kg/m3, the last printed digit")
    void densityMatchesTheEquationsOwnCheckValues() {
        // Mark: SEEN through several public test suites that quote the table.
        double[][] rows = {
            {0, 5, 0, 999.96675},
            {0, 25, 0, 997.04796},
            {35, 5, 0, 1027.67547},
            {35, 25, 0, 1023.34306},
            {0, 5, 1000, 1044.12802},
            {0, 25, 1000, 1037.90204},
            {35, 5, 1000, 1069.48914},
            {35, 25, 1000, 1062.53817}
        };
        for (double[] row : rows) {
            assertEquals(row[3], SeaWaterDensity.of(row[0], row[1], row[2]), 1.0e-5);
        }
        // Mark: DERIVED, recomputed by hand from the published coefficients.
        assertEquals(1025.97275, WaterState.sea(ICE + 15).density(), 1e-5);
    }

    @Test
    @ValidatedAgainst(
            source = "ITTC-WATER",
            where = "fresh water at 15 and 20 degrees",
            tolerance =
                    "0.003 kg/m3: temperature scales of 1968 and 1990 are not told apart; 0.005 where printed to 0.01")
    void freshWaterDensityMatchesTheTowingTankTable() {
        // Mark: SEEN through public copies; the table itself was not opened.
        assertEquals(999.1026, WaterState.fresh(ICE + 15).density(), 0.003);
        assertEquals(998.21, WaterState.fresh(ICE + 20).density(), 0.006);
    }

    @Test
    @ValidatedAgainst(
            source = "ITTC-WATER",
            where = "standard sea water, 5 to 30 degrees",
            tolerance =
                    "0.05 kg/m3 (50 parts per million): the table lies 0.045 to 0.05 above the equation of state; with one"
                            + " more atmosphere of pressure the two agree within 0.008, so the table seems to count it twice")
    void seaWaterDensityDiffersFromTheTowingTankTableByOneAtmosphere() {
        // Mark: SEEN through public copies; the table itself was not opened.
        double[][] rows = {{5, 1027.72}, {10, 1027.00}, {15, 1026.021}, {20, 1024.81}, {25, 1023.39}, {30, 1021.77}};
        for (double[] row : rows) {
            assertEquals(row[1], WaterState.sea(ICE + row[0]).density(), 0.05);
            assertEquals(row[1], SeaWaterDensity.of(35, row[0], 1.01325), 0.008);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "ITTC-WATER",
            where = "kinematic viscosity of standard sea water, 5 to 30 degrees",
            tolerance = "3e-10 m2/s, about 0.03 %: two published correlations")
    void seaWaterViscosityMatchesTheTowingTankTable() {
        // Mark: SEEN through public copies. At 15 degrees another copy has the older 1.18831e-6.
        double[][] rows = {
            {5, 1.5762e-6}, {10, 1.3604e-6}, {15, 1.1892e-6}, {20, 1.0508e-6}, {25, 0.93713e-6}, {30, 0.84253e-6}
        };
        for (double[] row : rows) {
            assertEquals(row[1], WaterState.sea(ICE + row[0]).kinematicViscosity(), 3e-10);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "ITTC-WATER",
            where = "kinematic viscosity of fresh water, 15 degrees",
            tolerance = "5e-10 m2/s, 0.04 %: two published correlations")
    void freshWaterViscosityMatchesTheTowingTankTable() {
        // Mark: SEEN through public copies.
        assertEquals(1.1386e-6, WaterState.fresh(ICE + 15).kinematicViscosity(), 5e-10);
    }

    @Test
    @ValidatedAgainst(source = "ITTC-WATER", where = "vapour pressure at 15 degrees, fresh and sea", tolerance = "1 Pa")
    void vapourPressureMatchesTheTowingTankTable() {
        // Mark: SEEN through public copies.
        assertEquals(1705.8, WaterState.fresh(ICE + 15).vapourPressure(), 1.0);
        assertEquals(1670.9, WaterState.sea(ICE + 15).vapourPressure(), 1.0);
    }

    @Test
    @ValidatedAgainst(
            source = "ITTC-57",
            where = "the line's formula at Reynolds numbers of 1e5 to 1e9",
            tolerance = "1e-8 from 1e7 on; below it the line is bent flat toward rest, 3e-5 at 1e5")
    void frictionFollowsTheLine() {
        // Mark: formula SEEN in Molland, Turnock and Hudson; values follow from it.
        double[][] rows = {
            {1e5, 8.33333e-3, 3e-5},
            {1e6, 4.68750e-3, 2e-7},
            {1e7, 3.00000e-3, 1e-8},
            {1e8, 2.08333e-3, 1e-8},
            {1e9, 1.53061e-3, 1e-8}
        };
        for (double[] row : rows) {
            assertEquals(row[1], FrictionLine.coefficient(row[0]), row[2]);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "MTH",
            where = "eq. 12.3-12.4, definition of the cavitation number; dynamic pressure of sea water at 15 degrees",
            tolerance = "2e-4; 5 Pa")
    void cavitationNumberMatchesItsDefinition() {
        // Mark: formula SEEN; values DERIVED with g 9.80665, 101325 Pa; three of them also SEEN rounded.
        WaterState sea = new WaterState(1026.021, 1.1892e-6, 1670.9);
        double knot = 1852.0 / 3600.0;
        double[][] rows = {
            {0.5, 20, 1.9276},
            {0.5, 30, .8567},
            {0.5, 40, .4819},
            {0.5, 45, .3808},
            {0.5, 50, .3084},
            {1.0, 30, .8979},
            {1.0, 40, .5051},
            {1.0, 50, .3232}
        };
        for (double[] row : rows) {
            assertEquals(row[2], sea.cavitationNumber(row[0], row[1] * knot), 2e-4);
        }
        assertEquals(339_424, sea.dynamicPressure(50 * knot), 5);
        assertEquals(54_308, sea.dynamicPressure(20 * knot), 5);
    }
}
