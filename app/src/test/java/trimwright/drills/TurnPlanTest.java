package trimwright.drills;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.cli.CliRun;
import trimwright.crew.TurnKind;
import trimwright.raceday.LoneBoatBook;
import trimwright.turn.TurnChance;
import trimwright.turn.TurnMoves;
import trimwright.turn.TurnOutcome;
import trimwright.turn.TurnPlanner;
import trimwright.turn.TurnSetup;
import trimwright.turn.TurnStart;
import trimwright.turn.TurnTally;
import trimwright.turn.TurnTrials;
import trimwright.units.Units;

/** Turns by cues: the same seed the same turn, tries do not disturb each other, moves that were found beat none. */
class TurnPlanTest {
    private static final BoatFile FILE = BoatFiles.find("whimbrel14");
    private static final WingSpec WING = FILE.boat().wings().get(0);

    /** Near what the search finds for a gybe in 15 kn of wind. */
    private static final TurnMoves GYBE = new TurnMoves(0, rad(-2), rad(16), rad(12), rad(15), rad(8), rad(22));

    @Test
    void aTryLeavesTheStartAsItWas() {
        TurnStart start = new TurnStart(setup(TurnKind.GYBE), TurnChance.of(3));
        TurnOutcome first = start.turn(GYBE);
        start.turnNaively();
        assertEquals(first, start.turn(GYBE));
        assertEquals(first, new TurnStart(setup(TurnKind.GYBE), TurnChance.of(3)).turn(GYBE));
    }

    @Test
    void cuesComeInTheirOrder() {
        TurnOutcome turn = new TurnStart(setup(TurnKind.GYBE), TurnChance.of(1)).turn(GYBE);
        assertTrue(turn.over() > 0 && turn.on() > turn.over() && turn.done() > turn.on(), turn.toString());
        TurnOutcome tack = new TurnStart(setup(TurnKind.TACK), TurnChance.of(1))
                .turn(new TurnMoves(0, 0, rad(6), rad(15), rad(10), rad(5), rad(14)));
        assertTrue(tack.helm() > 2, "the second board goes down first: " + tack);
        assertTrue(tack.over() > 0 && tack.on() > tack.over(), tack.toString());
    }

    @Test
    void movesThatWereFoundLoseLessThanNone() {
        TurnTrials trials = new TurnTrials(setup(TurnKind.GYBE), TurnTrials.seeds(2001, 8));
        TurnTally planned = TurnTally.of(setup(TurnKind.GYBE), trials.by(GYBE));
        TurnTally naive = TurnTally.of(setup(TurnKind.GYBE), trials.naively());
        assertTrue(planned.metres() < 0.85 * naive.metres(), planned.metres() + " m, naive " + naive.metres());
        assertEquals(0, planned.capsized());
    }

    /** Not to ease before bearing away in a breeze capsizes some: common practice, no source. */
    @Test
    void bearingAwayWithTheSheetAsItIsIsDearest() {
        TurnSetup setup = setup(TurnKind.BEAR_AWAY);
        TurnTrials trials = new TurnTrials(setup, TurnTrials.seeds(2001, 4));
        TurnTally eased = TurnTally.of(setup, trials.by(new TurnMoves(1.5, rad(2), 0, 0, rad(100), rad(2), rad(14))));
        assertTrue(eased.metres() < 0.6 * TurnTally.of(setup, trials.naively()).metres());
    }

    @Test
    void theSearchIsTheSameEveryTime() {
        TurnSetup setup = setup(TurnKind.GYBE);
        TurnTrials trials = new TurnTrials(setup, TurnTrials.seeds(1, 2));
        TurnMoves full = new TurnPlanner(setup, trials::by, 8).full();
        assertEquals(full, new TurnPlanner(setup, trials::by, 8).full());
        TurnMoves safe = new TurnPlanner(setup, trials::by, 8).safe(full, 0.05);
        assertTrue(safe.rate() >= rad(10) && safe.rate() <= rad(25), safe.toString());
    }

    @Test
    void plansAreToldAsCuesWithWhatTheyCameTo() {
        TurnSetup setup = setup(TurnKind.GYBE);
        TurnTrials trials = new TurnTrials(setup, TurnTrials.seeds(1, 2));
        TurnPlanRun.Plan plan = new TurnPlanRun.Plan(GYBE, TurnTally.of(setup, trials.by(GYBE)));
        TurnTally naive = TurnTally.of(setup, trials.naively());
        TurnPlanRun.Plans plans = new TurnPlanRun.Plans(setup, 0.05, naive, plan, plan);
        String text = TurnPlanDocument.text(plans);
        for (String said : List.of(
                "Full plan",
                "Safe plan",
                "16 deg, before it crosses",
                "12 deg on the new side",
                "crew's rule",
                "limits")) {
            assertTrue(text.contains(said), said + " in " + text);
        }
        JsonNode json = TurnPlanDocument.of(FILE, plans);
        assertEquals(16, json.path("full").path("over_awa_deg").asDouble(), 1e-9);
        assertEquals(5, json.path("safe").path("cues").size());
        assertEquals(2, json.path("naive").path("turns").asInt());
    }

    @Test
    void whatCannotBePlannedIsSaidInOneLine(@TempDir Path folder) {
        for (List<String> wrong : List.of(
                List.of("--kind", "loop"),
                List.of("--tws", "40"),
                List.of("--tries", "1"),
                List.of("--turbulence", "0.07"))) {
            CliRun run = CliRun.in(folder, "turn-plan", wrong.get(0), wrong.get(1));
            assertEquals(2, run.exit(), run.err());
            assertEquals(1, run.err().strip().lines().count(), run.err());
        }
    }

    private static TurnSetup setup(TurnKind kind) {
        return DrillBoats.turn(kind, FILE, WING, LoneBoatBook.get(), Units.fromKnots(15), 0.07);
    }

    private static double rad(double degrees) {
        return Math.toRadians(degrees);
    }
}
