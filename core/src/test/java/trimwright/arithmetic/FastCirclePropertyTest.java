package trimwright.arithmetic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class FastCirclePropertyTest {
    @Test
    void isTheCircleOfTheStandardLibrary() {
        for (double angle = -20_000; angle < 20_000; angle += 0.0737) {
            assertEquals(StrictMath.cos(angle), FastCircle.cos(angle), 1e-11);
            assertEquals(StrictMath.sin(angle), FastCircle.sin(angle), 1e-11);
        }
        for (double angle = -7; angle < 7; angle += 1e-4) {
            assertEquals(StrictMath.cos(angle), FastCircle.cos(angle), 3e-14);
            assertEquals(StrictMath.sin(angle), FastCircle.sin(angle), 3e-14);
        }
    }
}
