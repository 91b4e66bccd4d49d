package trimwright.arithmetic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ExponentialPropertyTest {
    private final Random random = new Random(5);

    @Test
    void isThatOfTheStandardLibrary() {
        for (int i = 0; i < 200_000; i++) {
            double x = i % 2 == 0 ? -720 + 1430 * random.nextDouble() : 3 * random.nextGaussian();
            double exact = StrictMath.exp(x);
            assertEquals(exact, Exponential.of(x), 2 * Math.ulp(exact), "" + x);
        }
        assertEquals(1, Exponential.of(0));
        assertEquals(0, Exponential.of(Double.NEGATIVE_INFINITY));
        assertEquals(Double.POSITIVE_INFINITY, Exponential.of(Double.POSITIVE_INFINITY));
        assertEquals(Double.NaN, Exponential.of(Double.NaN));
    }

    @Test
    void itsPowersAreThoseOfTheStandardLibrary() {
        for (int i = 0; i < 200_000; i++) {
            double base = StrictMath.exp(8 * random.nextGaussian());
            double exponent = 6 * random.nextGaussian();
            double exact = StrictMath.pow(base, exponent);
            double units = 5 + 4 * Math.abs(exponent * StrictMath.log(base));
            assertEquals(exact, Exponential.power(base, exponent), units * Math.ulp(exact), base + " " + exponent);
        }
        assertEquals(0, Exponential.power(0, 0.5));
        assertEquals(Double.NaN, Exponential.power(-1, 0.5));
    }

    @Test
    void itsHyperbolicTangentIsThatOfTheStandardLibrary() {
        for (int i = 0; i < 200_000; i++) {
            double x = (i % 2 == 0 ? 30 : 1) * random.nextGaussian();
            assertEquals(StrictMath.tanh(x), Exponential.tanh(x), 4 * Math.ulp(1.0), "" + x);
        }
        assertEquals(1, Exponential.tanh(Double.POSITIVE_INFINITY));
        assertEquals(-1, Exponential.tanh(Double.NEGATIVE_INFINITY));
        assertEquals(Double.NaN, Exponential.tanh(Double.NaN));
    }
}
