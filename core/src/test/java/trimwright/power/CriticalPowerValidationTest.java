package trimwright.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.Handling;
import trimwright.boat.Whimbrel14;
import trimwright.evidence.ValidatedAgainst;

class CriticalPowerValidationTest {
    @Test
    @ValidatedAgainst(
            source = "CRITICAL-POWER-EXAMPLE",
            where = "320 W for 180 s and 260 W for 720 s: 240 W and 14,400 J",
            tolerance = "1e-9: the example is exact")
    void twoEffortsGiveThePublishedPowerAndStore() {
        CriticalPower found = CriticalPower.ofTwoEfforts(320, 180, 260, 720);
        assertEquals(240, found.power(), 1e-9);
        assertEquals(14_400, found.store(), 1e-9 * 14_400);
        assertEquals(180, found.secondsAt(320), 1e-9 * 180);
        assertEquals(260, found.most(720), 1e-9 * 260);
    }

    /** Of 33 sailors on standing handles: lactate builds up from 202 W, the test's last stage was 332 W; peak of ten grinders. */
    @Test
    @ValidatedAgainst(
            source = "GRINDING-POWER",
            where =
                    "abstract: onset of blood lactate 202 W, power at peak oxygen uptake 332 W, peak 1,192 to 1,617 W in 7 s sprints",
            tolerance =
                    "the demo boat's grinders lie between the published means and inside the published range of peaks")
    void theDemoGrindersAreLikeThoseMeasured() {
        Boat boat = Whimbrel14.boat();
        Handling.Grinders grinders = Objects.requireNonNull(boat.handling()).grinders();
        assertTrue(grinders.criticalPower() > 202 && grinders.criticalPower() < 332);
        assertTrue(grinders.peakPower() > 1_192 && grinders.peakPower() < 1_617);
    }

    /**
     * Published press figures of grinders: some 550 W for 5 s and 250 W over 40 s are within what the demo boat's can give; 300 W over
     * a race of 25 minutes is not: those were stronger, by a quarter, than the assumed critical power.
     */
    @Test
    @ValidatedAgainst(
            source = "GRINDING-PRESS",
            where = "550 W for 5 s, 250 W each over 40 s, 300 W over 25 minutes",
            tolerance =
                    "the first two are exceeded; differs by 20 to 25 per cent over 25 minutes: the demo's grinders are weaker")
    void pressFiguresLieWithinButForTheLongest() {
        CriticalPower one = CriticalPower.of(
                Objects.requireNonNull(Whimbrel14.boat().handling()).grinders());
        assertTrue(one.most(5) > 550);
        assertTrue(one.most(40) > 250);
        double most = one.most(25 * 60);
        assertTrue(most > 0.75 * 300 && most < 0.85 * 300, most + " W");
    }

    /** The hyperbola with a peak ends in that peak and becomes the plain one for long times (Morton's limits). */
    @Test
    @ValidatedAgainst(
            source = "MORTON-1996",
            where = "abstract: a third parameter is the power at an instant; the plain hyperbola is its limit",
            tolerance =
                    "1e-12 at time zero; 1 per cent of the store's part after 100 k, since (t + k) / t = 1.01 there")
    void thePeakIsReachedAtOnceAndForgottenLater() {
        CriticalPower one = new CriticalPower(230, 12_000, 1_420);
        CriticalPower plain = new CriticalPower(230, 12_000, Double.POSITIVE_INFINITY);
        assertEquals(1_420, one.most(0), 1e-12 * 1_420);
        double late = 100 * 12_000.0 / (1_420 - 230);
        double storePart = plain.most(late) - 230;
        assertEquals(storePart, one.most(late) - 230, 0.01 * storePart);
    }
}
