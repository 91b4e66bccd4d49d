package trimwright.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WaterPropertyTest {
    private static final double ICE = 273.15;

    @Test
    void cavitationNumberFallsWithTheSquareOfSpeed() {
        WaterState sea = WaterState.sea(ICE + 15);
        double one = sea.cavitationNumber(0.7, 1);
        for (double speed = 0.5; speed < 40; speed += 0.5) {
            assertEquals(one, sea.cavitationNumber(0.7, speed) * speed * speed, 1e-9 * one);
        }
    }

    @Test
    void warmWaterIsLighterThinnerAndBoilsSooner() {
        for (int t = 5; t < 40; t++) {
            for (boolean salt : new boolean[] {true, false}) {
                WaterState cold = salt ? WaterState.sea(ICE + t) : WaterState.fresh(ICE + t);
                WaterState warm = salt ? WaterState.sea(ICE + t + 1) : WaterState.fresh(ICE + t + 1);
                assertTrue(warm.density() < cold.density());
                assertTrue(warm.kinematicViscosity() < cold.kinematicViscosity());
                assertTrue(warm.vapourPressure() > cold.vapourPressure());
            }
        }
    }

    @Test
    void waterThatIsIceOrSteamIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> WaterState.sea(ICE - 5));
        assertThrows(IllegalArgumentException.class, () -> WaterState.fresh(ICE + 60));
        assertThrows(IllegalArgumentException.class, () -> WaterState.sea(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new WaterState(-1, 1e-6, 1700));
    }

    @Test
    void frictionIsFiniteDownToRest() {
        double before = FrictionLine.coefficient(0);
        assertTrue(Double.isFinite(before));
        for (double re = 1; re < 1e10; re *= 1.5) {
            double here = FrictionLine.coefficient(re);
            assertTrue(here <= before && here > 0);
            before = here;
        }
    }

    @Test
    void wettingStartsAndEndsWithoutAStepInSlope() {
        double over = 0.1;
        assertEquals(0, Wetting.length(-1, over), 0);
        assertEquals(0.7, Wetting.length(0.7, over), 0);
        assertEquals(1, Wetting.fraction(0.2, over), 0);
        double length = 0;
        double fraction = 0;
        for (double x = -0.2; x < 0.3; x += 1e-4) {
            double slope = (Wetting.length(x + 1e-7, over) - Wetting.length(x - 1e-7, over)) / 2e-7;
            assertEquals(length, slope, 0.01);
            length = slope;
            slope = (Wetting.fraction(x + 1e-7, over) - Wetting.fraction(x - 1e-7, over)) / 2e-7;
            assertEquals(fraction, slope, 0.1);
            fraction = slope;
        }
    }
}
