package trimwright.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

class FalseDiscoveriesValidationTest {
    @Test
    @ValidatedAgainst(
            source = "BENJAMINI-HOCHBERG",
            where = "section 4.1, example of 15 hypotheses at 0.05, from memory",
            tolerance = "exact: the four smallest are rejected")
    void theWorkedExample() {
        double[] chances = {
            0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262, 0.5719, 0.6528,
            0.7590, 1.0000
        };
        boolean[] told = FalseDiscoveries.told(chances, 0.05);
        assertEquals(4, IntStream.range(0, told.length).filter(i -> told[i]).count());
        assertEquals(4, IntStream.range(0, 4).filter(i -> told[i]).count());
    }

    /** A larger one is told with those below it although the middle one alone would not be. */
    @Test
    void theLargestThatPassesTakesAllSmallerWithIt() {
        boolean[] told = FalseDiscoveries.told(new double[] {0.049, 0.04, 0.9, 0.001}, 0.1);
        assertEquals(3, IntStream.range(0, 4).filter(i -> told[i]).count());
    }
}
