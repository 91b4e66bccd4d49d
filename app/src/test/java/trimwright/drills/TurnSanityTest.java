package trimwright.drills;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.crew.TurnKind;
import trimwright.raceday.LoneBoatBook;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnOutcome;
import trimwright.turn.TurnSetup;
import trimwright.turn.TurnStart;
import trimwright.turn.TurnTally;
import trimwright.units.Units;

/**
 * Bands of what tacks cost without a plan, as a debrief of the log would count it (docs/validation.md, plans of turns). Set from the
 * model, no source: they say only that it still does what it did, and in which order kinds of turns cost.
 */
class TurnSanityTest {
    private static final BoatFile FILE = BoatFiles.find("whimbrel14");
    private static final WingSpec WING = FILE.boat().wings().get(0);
    private static final double WIND = Units.fromKnots(16);

    @Test
    void tacksCostWhatTheModelSaysAndMoreThanGybes() {
        double flying = lost(TurnKind.TACK, TurnBegin.FOILS);
        double down = lost(TurnKind.TACK, TurnBegin.LET_DOWN);
        double gybe = lost(TurnKind.GYBE, TurnBegin.FOILS);
        assertTrue(flying > 70 && flying < 170, "begun on the foils " + flying + " m");
        assertTrue(down > 70 && down < 170, "let down " + down + " m");
        assertTrue(flying > gybe, "tack " + flying + " m, gybe " + gybe + " m");
    }

    private static double lost(TurnKind kind, TurnBegin begin) {
        TurnSetup setup = DrillBoats.turn(kind, begin, FILE, WING, LoneBoatBook.get(), WIND, 0.07);
        return TurnTally.of(setup, new TurnFleet(setup).sail(2001, 8, TurnStart::turnNaively))
                .mean(TurnOutcome::logged);
    }
}
