package trimwright.arithmetic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LogarithmPropertyTest {
    @Test
    void isThatOfTheStandardLibrary() {
        Random random = new Random(3);
        for (int i = 0; i < 200_000; i++) {
            double x = i % 2 == 0 ? StrictMath.exp(-60 + 120 * random.nextDouble()) : 1 + 1e-3 * random.nextGaussian();
            double exact = StrictMath.log(x);
            // Four units in the last place of the larger of the result and its parts, which cancel next to 1 only from
            // below.
            assertEquals(exact, Logarithm.of(x), 4 * Math.ulp(Math.max(Math.abs(exact), x < 1 ? 1e-3 : 0)), "" + x);
        }
        assertEquals(0, Logarithm.of(1));
        assertEquals(Double.NaN, Logarithm.of(-1));
        assertEquals(Double.NEGATIVE_INFINITY, Logarithm.of(0));
    }
}
