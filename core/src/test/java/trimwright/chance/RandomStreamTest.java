package trimwright.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RandomStreamTest {
    private static final int DRAWS = 200_000;
    /** Five standard errors of a mean of that many draws of variance 1. */
    private static final double FIVE_ERRORS = 5 / Math.sqrt(DRAWS);

    @Test
    void eachPurposeHasItsOwnNumbers() {
        assertNotEquals(
                RandomStream.of(7, "shifts").nextLong(),
                RandomStream.of(7, "puffs").nextLong());
        assertNotEquals(
                RandomStream.ofCell(7, 1, 2).nextLong(),
                RandomStream.ofCell(7, 2, 1).nextLong());
        assertEquals(
                RandomStream.of(7, "puffs").nextLong(),
                RandomStream.of(7, "puffs").nextLong());
    }

    @Test
    void uniformNumbersStayInRangeWithTheRightMean() {
        RandomStream random = new RandomStream(3);
        double sum = 0;
        for (int i = 0; i < DRAWS; i++) {
            double value = random.uniform(-1, 3);
            assertTrue(value >= -1 && value < 3);
            sum += value;
        }
        assertEquals(1, sum / DRAWS, FIVE_ERRORS * 4 / Math.sqrt(12));
    }

    @Test
    void normalNumbersHaveMeanZeroVarianceOneAndNormalTails() {
        RandomStream random = new RandomStream(4);
        double sum = 0;
        double square = 0;
        int beyondTwo = 0;
        for (int i = 0; i < DRAWS; i++) {
            double value = random.normal();
            sum += value;
            square += value * value;
            beyondTwo += Math.abs(value) > 1.959964 ? 1 : 0;
        }
        assertEquals(0, sum / DRAWS, FIVE_ERRORS);
        assertEquals(1, square / DRAWS, FIVE_ERRORS * Math.sqrt(2));
        assertEquals(0.05, (double) beyondTwo / DRAWS, FIVE_ERRORS * 0.22);
    }
}
