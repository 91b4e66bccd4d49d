package trimwright.arithmetic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ArcPropertyTest {
    @Test
    void isTheAngleOfTheStandardLibrary() {
        Random random = new Random(4);
        for (int i = 0; i < 200_000; i++) {
            double size = StrictMath.exp(-10 + 20 * random.nextDouble());
            double angle = Math.PI * (2 * random.nextDouble() - 1) * (i % 2 == 0 ? 1 : 0.15);
            double sine = size * StrictMath.sin(angle);
            double cosine = size * StrictMath.cos(angle);
            // Two halvings round five times, and the result is four times what they leave: 16 units in the last place.
            assertEquals(
                    StrictMath.atan2(sine, cosine),
                    Arc.angle(sine, cosine),
                    16 * Math.ulp(Math.abs(angle)),
                    "" + angle);
        }
        assertEquals(0, Arc.angle(0, 0));
        assertEquals(Math.PI, Arc.angle(0, -1));
    }
}
