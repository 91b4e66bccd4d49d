package trimwright.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class TrianglesPropertyTest {
    @Test
    void thereAndBackIsTheSameWind() {
        Random random = new Random(5);
        for (int i = 0; i < 10_000; i++) {
            TrueWind w = new TrueWind(30 * random.nextDouble(), Math.PI * (1 - 2 * random.nextDouble()));
            double ahead = 30 * random.nextDouble();
            double starboard = 2 * random.nextGaussian();
            TrueWind back = w.apparent(ahead, starboard).trueWind(ahead, starboard);
            assertEquals(w.speed(), back.speed(), 1e-12 * 60);
            assertEquals(w.speed() * Math.sin(w.angle()), back.speed() * Math.sin(back.angle()), 1e-12 * 60);
        }
    }

    @Test
    void dippingToLeewardFreesTheApparentWind() {
        // Leeway to leeward on starboard tack is to port: negative.
        TrueWind w = new TrueWind(8, 0.8);
        assertTrue(w.apparent(12, -0.5).angle() < w.apparent(12, 0).angle());
    }

    @Test
    void deadAheadFromAsternIsPlusPi() {
        assertEquals(Math.PI, ApparentWind.fromComponents(-3, -0.0).angle());
    }

    @Test
    void noWindHasNoProfileAndNoRoughness() {
        assertEquals(0, WindProfile.overSea(0).speedAt(20));
        assertEquals(0, WindProfile.overSea(8).speedAt(0));
        assertEquals(7, WindProfile.uniform(7).speedAt(0.1));
    }
}
