package trimwright.drills;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.cli.CliRun;
import trimwright.crew.TurnConduct;
import trimwright.crew.TurnKind;
import trimwright.raceday.LoneBoatBook;
import trimwright.turn.AbortFinder;
import trimwright.turn.SpoiltShare;
import trimwright.turn.TurnAbort;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnChance;
import trimwright.turn.TurnMoves;
import trimwright.turn.TurnOutcome;
import trimwright.turn.TurnPlanner;
import trimwright.turn.TurnSetup;
import trimwright.turn.TurnSigns;
import trimwright.turn.TurnStart;
import trimwright.turn.TurnTally;
import trimwright.units.Units;

/** Turns by cues: the same seed the same turn, tries do not disturb each other, moves that were found beat none. */
class TurnPlanTest {
    private static final BoatFile FILE = BoatFiles.find("whimbrel14");
    private static final WingSpec WING = FILE.boat().wings().get(0);

    /** Near what the search finds for a gybe in 15 kn of wind. */
    private static final TurnMoves GYBE = new TurnMoves(
            0, rad(-4), rad(13), rad(9), rad(7), rad(13), new TurnConduct(rad(25), rad(10), 0.35, 0.1, 0.07, 0.93));

    /** Where the search for a tack begins. */
    private static final TurnMoves TACK = new TurnMoves(
            0, rad(-3), rad(8), rad(16), rad(17), rad(6), new TurnConduct(rad(14), rad(5), 0.8, 0.9, 0.28, 0.95));

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
        TurnOutcome tack = new TurnStart(setup(TurnKind.TACK), TurnChance.of(1)).turn(TACK);
        assertTrue(tack.helm() > 2, "the second board goes down first: " + tack);
        assertTrue(tack.over() > 0 && tack.on() > tack.over(), tack.toString());
    }

    /** What is asked of plans: a fifth of the naive loss; here of moves near those that were found, in gusts of their own. */
    @Test
    void movesThatWereFoundLoseAFifthLessThanNone() {
        TurnSetup setup = setup(TurnKind.GYBE);
        TurnTally planned = sailed(setup, 6, start -> start.turn(GYBE));
        TurnTally naive = sailed(setup, 6, TurnStart::turnNaively);
        assertTrue(planned.metres() < 0.8 * naive.metres(), planned.metres() + " m, naive " + naive.metres());
        assertEquals(0, planned.capsized());
    }

    /** Let down, the bow waits for a hull in the water; off the foils she turns at once and slowly. */
    @Test
    void turnsBeginAsTheyAreToldTo() {
        TurnOutcome flying = new TurnStart(setup(TurnKind.BEAR_AWAY), TurnChance.of(1)).turnNaively();
        TurnOutcome down = new TurnStart(setup(TurnKind.BEAR_AWAY, TurnBegin.LET_DOWN), TurnChance.of(1)).turnNaively();
        TurnOutcome off = new TurnStart(setup(TurnKind.GYBE, TurnBegin.HULLS), TurnChance.of(1)).turnNaively();
        assertEquals(0, flying.helm(), 0.1);
        assertTrue(down.helm() > 1 && down.helm() < 8, "she comes down by a metre first: " + down);
        assertEquals(0, off.helm(), 0.1);
        TurnOutcome gybe = new TurnStart(setup(TurnKind.GYBE), TurnChance.of(1)).turnNaively();
        assertTrue(off.least() < 0.5 * gybe.least(), off.least() + " of " + gybe.least());
        TurnSetup setup = setup(TurnKind.BEAR_AWAY, TurnBegin.LET_DOWN);
        assertEquals(TurnSetup.Touching.PLANNED, setup.touching());
    }

    /** Bearing away brings the apparent wind aft and then forward again with the speed: what was eased has to come back in. */
    @Test
    void aBearAwayTellsTheEaseAndWhatIsGroundBack() {
        TurnMoves moves = new TurnMoves(1.5, rad(3), 0, 0, rad(100), rad(2), new TurnConduct(rad(14), 0, 1, 0, 0, 0.9));
        TurnSetup steady = DrillBoats.turn(
                TurnKind.BEAR_AWAY, TurnBegin.FOILS, FILE, WING, LoneBoatBook.get(), Units.fromKnots(15), 0.001);
        TurnOutcome turn = new TurnStart(steady, TurnChance.of(1)).turn(moves);
        assertEquals(rad(3), turn.sheetWork().eased(), rad(1));
        assertTrue(turn.sheetWork().hauled() > rad(3) && turn.sheetWork().time() > 0.5, turn.toString());
    }

    @Test
    void theAbortCueIsTheSignThatPartsBadTurnsFromGoodOnes() {
        TurnSetup setup = setup(TurnKind.GYBE);
        TurnOutcome good = new TurnStart(setup, TurnChance.of(1)).turn(GYBE);
        List<TurnOutcome> turns = new ArrayList<>();
        for (int i = 0; i < 80; i++) {
            boolean bad = i % 8 < 2;
            turns.add(with(good, bad ? 0.3 : 0, new TurnSigns(0, rad(bad ? 7 : i % 5), 0, 0)));
        }
        AbortFinder.Found found = new AbortFinder(
                        setup, TurnTally.of(setup, turns), (abort, number) -> with(good, 0, TurnSigns.NONE))
                .find();
        assertTrue(found.isTelling());
        assertEquals(TurnAbort.Sign.LEEWARD, found.abort().sign());
        assertEquals(rad(5), found.abort().least(), 1e-9);
        assertEquals(TurnAbort.Action.EASE, found.abort().action(), "back would spoil no fewer");
        assertEquals(
                List.of(10, 10, 30, 0, 10, 0),
                List.of(
                        found.shown(),
                        found.bad(),
                        found.others(),
                        found.othersBad(),
                        found.spoilt(),
                        found.stillSpoilt()));
        AbortFinder.Found useless =
                new AbortFinder(setup, TurnTally.of(setup, turns), (abort, number) -> turns.get(number)).find();
        assertTrue(!useless.isTelling(), "giving up spoils as many: " + useless);
        AbortFinder.Found none = new AbortFinder(
                        setup, TurnTally.of(setup, Collections.nCopies(40, good)), (abort, number) -> good)
                .find();
        assertTrue(!none.isTelling());
        assertEquals(0, none.shown());
    }

    /** A turn that is given up before the stern goes through the wind ends on the old tack. */
    @Test
    void aGybeThatIsGivenUpIsNotSailed() {
        TurnStart start = new TurnStart(setup(TurnKind.GYBE), TurnChance.of(1));
        TurnAbort atOnce = new TurnAbort(TurnAbort.Sign.LEEWARD, rad(-90), TurnAbort.Action.BACK);
        TurnOutcome given = start.turn(GYBE, atOnce);
        assertTrue(Double.isNaN(given.over()) && Double.isNaN(given.on()), given.toString());
        assertTrue(!Double.isNaN(start.turn(GYBE).over()));
    }

    private static TurnOutcome with(TurnOutcome of, double elevator, TurnSigns signs) {
        return new TurnOutcome(
                of.metres(),
                of.least(),
                0,
                false,
                elevator,
                0,
                0,
                0,
                of.widest(),
                of.helm(),
                of.over(),
                of.on(),
                of.done(),
                of.closest(),
                of.settled(),
                of.sheetWork(),
                signs,
                of.logged());
    }

    /** A tack counts until a boat that comes off her foils can fly again. */
    @Test
    void aTackCountsForAMinute() {
        double tack = TurnStart.counted(setup(TurnKind.TACK));
        assertEquals(2 * TurnStart.counted(setup(TurnKind.GYBE)), tack);
        assertEquals(tack, TurnStart.counted(setup(TurnKind.GYBE, TurnBegin.LET_DOWN)));
    }

    @Test
    void straightSailingLosesLessThanAnyTurn() {
        TurnSetup setup = setup(TurnKind.GYBE);
        assertTrue(sailed(setup, 3, TurnStart::straight).metres()
                < sailed(setup, 3, start -> start.turn(GYBE)).metres());
    }

    /** Not to ease before bearing away in a breeze capsizes some: common practice, no source. */
    @Test
    void bearingAwayWithTheSheetAsItIsIsDearest() {
        TurnSetup setup = setup(TurnKind.BEAR_AWAY);
        TurnMoves moves =
                new TurnMoves(1.5, rad(2), 0, 0, rad(100), rad(2), new TurnConduct(rad(14), 0, 1, 0, 0, 0.95));
        TurnTally eased = sailed(setup, 4, start -> start.turn(moves));
        assertTrue(
                eased.metres() < 0.6 * sailed(setup, 4, TurnStart::turnNaively).metres());
    }

    /** Where touching is planned it spoils nothing, a limit passed still does. */
    @Test
    void aHullInTheWaterSpoilsOnlyWhereSheIsMeantToFly() {
        TurnSetup setup = setup(TurnKind.TACK);
        List<TurnOutcome> turns = List.of(new TurnStart(setup, TurnChance.of(1)).turn(TACK));
        assertTrue(turns.get(0).touched(), turns.toString());
        assertEquals(1, TurnTally.of(setup, turns).spoilt());
        assertEquals(
                0, TurnTally.of(setup.with(TurnSetup.Touching.PLANNED), turns).spoilt());
    }

    /** Limits by the closed forms of the binomial distribution at its ends, and its symmetry. */
    @Test
    void aChanceIsToldWithTheIntervalOfItsBinomialDistribution() {
        SpoiltShare none = SpoiltShare.of(0, 60);
        assertEquals(0, none.low());
        assertEquals(1 - Math.pow(0.025, 1.0 / 60), none.high(), 1e-9);
        SpoiltShare all = SpoiltShare.of(60, 60);
        assertEquals(1 - none.high(), all.low(), 1e-9);
        assertEquals(1, all.high());
        SpoiltShare half = SpoiltShare.of(3, 6);
        assertEquals(1, half.low() + half.high(), 1e-9);
        // At the upper end three or fewer of six happen once in forty.
        double p = half.high();
        double few = 0;
        for (int k = 0; k <= 3; k++) {
            few += new int[] {1, 6, 15, 20}[k] * Math.pow(p, k) * Math.pow(1 - p, 6 - k);
        }
        assertEquals(0.025, few, 1e-9);
    }

    /** One thread, two, eight: the fleet's answers stand in the order of their numbers; the search takes nothing else in. */
    @Test
    void theSearchIsTheSameEveryTime() {
        TurnSetup setup = setup(TurnKind.GYBE);
        TurnFleet fleet = new TurnFleet(setup);
        TurnPlanner planner = new TurnPlanner(
                setup, (moves, first, count) -> fleet.sail(first, Math.min(2, count), start -> start.turn(moves)), 10);
        TurnPlanner.Full full = planner.full();
        assertEquals(full, planner.full());
        assertEquals(TurnSetup.Touching.SPOILS, full.touching());
    }

    @Test
    void plansAreToldAsCuesWithWhatTheyCameTo() {
        TurnSetup setup = setup(TurnKind.GYBE);
        TurnTally tally = sailed(setup, 2, start -> start.turn(GYBE));
        AbortFinder.Found abort = new AbortFinder.Found(
                new TurnAbort(TurnAbort.Sign.SLOWING, 0.3, TurnAbort.Action.BACK), true, 6, 4, 94, 5, 3, 1);
        TurnPlanRun.Plan plan = new TurnPlanRun.Plan(GYBE, tally, abort);
        TurnTally naive = sailed(setup, 2, TurnStart::turnNaively);
        String text = TurnPlanDocument.text(new TurnPlanRun.Plans(setup, 0.05, true, naive, naive, plan, plan));
        for (String said : List.of(
                "Full plan",
                "Safe plan",
                "13 deg, before it crosses",
                "9 deg on the new side",
                "93 % of the card's moment",
                "10 deg closer to the wind",
                "30 % of the speed at the driver's word is gone",
                "Spoilt were 3 of them sailed on, 1 given up so",
                "To grind back on the new side",
                "limits")) {
            assertTrue(text.contains(said), said + " in " + text);
        }
        TurnPlanRun.Plans unsafe = new TurnPlanRun.Plans(setup, 0.05, false, naive, naive, plan, plan);
        assertTrue(TurnPlanDocument.text(unsafe).contains("No plan was found"), TurnPlanDocument.text(unsafe));
        assertTrue(!TurnPlanDocument.text(unsafe).contains("Safe plan"), TurnPlanDocument.text(unsafe));
        JsonNode json = TurnPlanDocument.of(FILE, unsafe);
        assertEquals(13, json.path("full").path("over_awa_deg").asDouble(), 1e-9);
        assertEquals(7, json.path("safe").path("cues").size());
        assertEquals(false, json.path("safe").path("kept").asBoolean(true));
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

    private static TurnTally sailed(TurnSetup setup, int turns, Function<TurnStart, TurnOutcome> how) {
        return TurnTally.of(setup, new TurnFleet(setup).sail(2001, turns, how));
    }

    private static TurnSetup setup(TurnKind kind) {
        return setup(kind, TurnBegin.FOILS);
    }

    private static TurnSetup setup(TurnKind kind, TurnBegin begin) {
        return DrillBoats.turn(kind, begin, FILE, WING, LoneBoatBook.get(), Units.fromKnots(15), 0.07);
    }

    private static double rad(double degrees) {
        return Math.toRadians(degrees);
    }
}
