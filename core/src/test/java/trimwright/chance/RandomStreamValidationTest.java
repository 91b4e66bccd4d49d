package trimwright.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

class RandomStreamValidationTest {
    @Test
    @ValidatedAgainst(
            source = "SPLITMIX64",
            where =
                    "first five outputs for seed 1234567, as public test suites of the generator list them (from memory)",
            tolerance = "none: integers")
    void theGeneratorGivesThePublishedNumbers() {
        RandomStream random = new RandomStream(1234567);
        long[] expected = {
            Long.parseUnsignedLong("6457827717110365317"),
            Long.parseUnsignedLong("3203168211198807973"),
            Long.parseUnsignedLong("9817491932198370423"),
            Long.parseUnsignedLong("4593380528125082431"),
            Long.parseUnsignedLong("16408922859458223821")
        };
        for (long value : expected) {
            assertEquals(value, random.nextLong());
        }
    }
}
