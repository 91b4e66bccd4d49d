package trimwright.arithmetic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class FastCirclePropertyTest {
    /** Rounding of an angle by its last place, and of the series. */
    private static final double PLACES = 3e-16;

    @Test
    void isThatOfTheStandardLibrary() {
        Random random = new Random(7);
        for (int i = 0; i < 200_000; i++) {
            double x = (i % 3 == 0 ? 1000 : i % 3 == 1 ? 2 : 30_000) * random.nextGaussian();
            double tolerance = PLACES * (1 + Math.abs(x));
            assertEquals(StrictMath.cos(x), FastCircle.cos(x), tolerance, "cos " + x);
            assertEquals(StrictMath.sin(x), FastCircle.sin(x), tolerance, "sin " + x);
        }
        assertEquals(1, FastCircle.cos(0));
        assertEquals(0, FastCircle.sin(0));
        assertEquals(Double.NaN, FastCircle.cos(Double.NaN));
    }

    @Test
    void cosineIsEvenAndSineIsOdd() {
        Random random = new Random(8);
        for (int i = 0; i < 10_000; i++) {
            double x = 100 * random.nextGaussian();
            assertEquals(FastCircle.cos(x), FastCircle.cos(-x));
            assertEquals(-FastCircle.sin(x), FastCircle.sin(-x));
        }
    }
}
