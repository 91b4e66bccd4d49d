package trimwright.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

class UnitsValidationTest {
    @Test
    @ValidatedAgainst(
            source = "SI",
            where = "SI brochure, table of non-SI units: the knot",
            tolerance = "1e-9, the value is exact")
    void fiftyKnotsAreNinetyTwoPointSixKilometresAnHour() {
        assertEquals(92.6, Units.toKmh(Units.fromKnots(50)), 1e-9);
    }
}
