package trimwright.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.evidence.ValidatedAgainst;

class LiftLagValidationTest {
    @ParameterizedTest
    @CsvSource({"0, 0.5", "5, 0.7938", "10, 0.8786", "13, 0.9019", "20, 0.9328"})
    @ValidatedAgainst(
            source = "WAGNER-JONES",
            where = "values of Jones's approximation worked out by an independent program",
            tolerance = "1e-4: rounding of the values")
    void liftFollowsAChangeOfIncidence(double halfChords, double share) {
        assertEquals(share, LiftLag.WAGNER.after(halfChords), 1e-4);
    }

    @Test
    @ValidatedAgainst(
            source = "WAGNER-JONES",
            where = "Garrick's closed form 1 - 2 / (4 + s) of Wagner's function, within 2 per cent of it (from memory)",
            tolerance = "0.03: both approximate one function")
    void twoApproximationsOfWagnersFunctionAgree() {
        for (double s = 0; s <= 40; s += 0.5) {
            assertEquals(1 - 2 / (4 + s), LiftLag.WAGNER.after(s), 0.03, s + " half chords");
        }
    }

    @Test
    @ValidatedAgainst(
            source = "KUSSNER-JONES",
            where =
                    "the other usual approximation (s^2 + s) / (s^2 + 2.82 s + 0.80) of Kuessner's function (from memory)",
            tolerance =
                    "0.035 from one half chord on: both approximate one function; Jones's begins at 0.08 where the function is 0")
    void twoApproximationsOfKuessnersFunctionAgree() {
        for (double s = 1; s <= 40; s += 0.5) {
            assertEquals((s * s + s) / (s * s + 2.82 * s + 0.80), LiftLag.KUSSNER.after(s), 0.035, s + " half chords");
        }
        assertEquals(0.08, LiftLag.KUSSNER.after(0), 1e-9);
    }

    /**
     * A finite wing starts with little less lift than an infinite one and ends with much less, so that it has more of its own final
     * lift at once and the rest sooner: 0.64 for 0.5, and nine tenths within four half chords for thirteen.
     */
    @Test
    @ValidatedAgainst(
            source = "WAGNER-JONES",
            where =
                    "abstract: starting lift of the finite wing only slightly less than that of the infinite one, final lift considerably less",
            tolerance =
                    "a tenth of the starting lift; final lift of aspect ratio six 0.74 of the infinite wing's (from memory)")
    void aFiniteWingStartsAlikeAndIsThereSooner() {
        double ofInfinite = 0.74;
        assertEquals(LiftLag.WAGNER.after(0), ofInfinite * LiftLag.WAGNER_SIX.after(0), 0.05);
        for (double s = 0.5; s <= 40; s += 0.5) {
            assertTrue(LiftLag.WAGNER_SIX.after(s) > LiftLag.WAGNER.after(s), s + " half chords");
            assertTrue(ofInfinite * LiftLag.WAGNER_SIX.after(s) < LiftLag.WAGNER.after(s), s + " half chords");
        }
        assertEquals(0.9, LiftLag.WAGNER_SIX.after(3.4), 0.01);
        for (double s = 1; s <= 40; s += 0.5) {
            assertTrue(LiftLag.KUSSNER_SIX.after(s) > LiftLag.KUSSNER.after(s), s + " half chords");
        }
    }

    /** Half chords of four metres at 15 m/s: nine tenths of the lift after 1.7 s. */
    @Test
    @ValidatedAgainst(
            source = "WAGNER-JONES",
            where = "wing of 4 m chord at 15 m/s: 90 per cent in 1.7 s",
            tolerance = "0.05 s: the value has two digits")
    void aWingOfFourMetresFollowsInTwoSeconds() {
        double seconds = 0;
        while (LiftLag.WAGNER.after(2 * 15 * seconds / 4) < 0.9) {
            seconds += 0.01;
        }
        assertEquals(1.7, seconds, 0.05);
    }

    /** What remembers in steps gives the same as the closed form, in steps of any length. */
    @Test
    void memoryFollowsTheClosedForm() {
        for (LiftLag lag : new LiftLag[] {LiftLag.WAGNER, LiftLag.KUSSNER, LiftLag.WAGNER_SIX, LiftLag.KUSSNER_SIX}) {
            LiftLag.Memory memory = lag.of(0);
            double travelled = 0;
            double[] steps = {0, 0.1, 0.7, 0.05, 2, 5, 0.3};
            for (double step : steps) {
                travelled += step;
                assertEquals(lag.after(travelled), memory.act(1, step), 1e-12);
            }
            assertTrue(memory.act(1, 1e4) > 1 - 1e-9);
        }
    }
}
