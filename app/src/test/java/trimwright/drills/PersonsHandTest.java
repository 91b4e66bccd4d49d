package trimwright.drills;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.motion.Controls;
import trimwright.practice.Drill;
import trimwright.practice.DrillMoment;
import trimwright.practice.DrillResult;
import trimwright.practice.DrillRun;
import trimwright.practice.DrillSetup;
import trimwright.practice.HandInput;
import trimwright.practice.PersonsHand;
import trimwright.practice.WingPart;
import trimwright.raceday.LoneBoatBook;
import trimwright.units.Units;

/** The wing in a person's hands: what they ask is what moves, and their log is the run again. */
class PersonsHandTest {
    private static final BoatFile FILE = BoatFiles.find("whimbrel14");
    private static final WingSpec WING = FILE.boat().wings().get(0);

    @Test
    void whoTakesNothingSailsLikeTheComputedHand() {
        DrillResult alone = DrillRun.sail(setup(Drill.HOLD), Pilot.REFERENCE.hand(WING));
        DrillResult none = DrillRun.sail(setup(Drill.HOLD), new PersonsHand(WING, Set.of(), 1));
        assertEquals(alone.lost(), none.lost(), 0.3);
    }

    @Test
    void easingTheSheetEasesItAndTheCamberStays() {
        PersonsHand hand = new PersonsHand(WING, EnumSet.allOf(WingPart.class), 1);
        DrillRun run = new DrillRun(setup(Drill.HOLD), hand);
        Controls before = sail(run, 0);
        hand.put(new HandInput(1, 0, 0, 0));
        Controls after = sail(run, 0.5);
        assertTrue(after.sheet() > before.sheet() + Math.toRadians(4), Math.toDegrees(after.sheet()) + " degrees");
        assertEquals(before.camber(), after.camber(), Math.toRadians(0.2));
        hand.put(HandInput.NONE);
        Controls held = sail(run, 1.5);
        assertEquals(after.sheet(), held.sheet(), Math.toRadians(2.1), "letting go stops it");
    }

    @Test
    void anInversionPutsTheCamberOver() {
        PersonsHand hand = new PersonsHand(WING, EnumSet.allOf(WingPart.class), 1);
        DrillRun run = new DrillRun(setup(Drill.HOLD), hand);
        Controls before = sail(run, 0);
        hand.put(new HandInput(0, 0, 0, 1));
        Controls after = sail(run, 3);
        assertEquals(-before.camber(), after.camber(), Math.toRadians(1));
        assertEquals(-1, hand.side());
    }

    @Test
    void theLogIsTheRunAgain() {
        PersonsHand hand = new PersonsHand(WING, EnumSet.of(WingPart.SHEET), 1);
        DrillRun run = new DrillRun(setup(Drill.GUSTS), hand);
        for (int i = 0; !run.isOver(); i++) {
            // Hands that come and go, and not in step with anything.
            hand.put(new HandInput(Math.floorMod(i / 37, 3) - 1.0, 0, 0, 0));
            run.step();
        }
        DrillResult again =
                DrillRun.sail(setup(Drill.GUSTS), new PersonsHand(WING, EnumSet.of(WingPart.SHEET), 1, hand.log()));
        assertEquals(run.result(), again);
        assertNotEquals(run.result(), DrillRun.sail(setup(Drill.GUSTS), Pilot.REFERENCE.hand(WING)));
    }

    @Test
    void handsBeyondTheirThrowAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new HandInput(1.5, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new HandInput(0, Double.NaN, 0, 0));
    }

    /** The controls at a time since the drill began (s). */
    private static Controls sail(DrillRun run, double until) {
        DrillMoment moment = run.step();
        while (moment.time() < until) {
            moment = run.step();
        }
        return moment.sight().state().controls();
    }

    private static DrillSetup setup(Drill drill) {
        return DrillBoats.setup(drill, FILE, WING, LoneBoatBook.get(), Units.fromKnots(15), 5);
    }
}
