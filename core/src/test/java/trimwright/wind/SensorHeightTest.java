package trimwright.wind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.air.WindProfile;

class SensorHeightTest {
    @Test
    void goingUpTheProfileAndBackIsNoChange() {
        for (double reference = 2; reference <= 20; reference += 3) {
            for (double height : new double[] {3, 10, 20, 28}) {
                double atSensor = WindProfile.overSea(reference).speedAt(height);
                // 1e-5: what three rounds leave.
                assertEquals(reference, atSensor * SensorHeight.toReference(atSensor, height), 1e-5 * reference);
            }
        }
    }

    @Test
    void windAtTheMastheadIsStrongerThanAtTheReferenceHeight() {
        assertTrue(SensorHeight.toReference(8, 25) < 0.95);
        assertEquals(1, SensorHeight.toReference(8, 10), 1e-12);
    }

    @Test
    void absurdReadingsGetAFiniteFactor() {
        assertTrue(Double.isFinite(SensorHeight.toReference(0, 25)));
        assertTrue(Double.isFinite(SensorHeight.toReference(500, 25)));
    }
}
