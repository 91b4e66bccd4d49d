package trimwright.drills;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.cli.CliRun;
import trimwright.practice.Drill;
import trimwright.practice.DrillResult;
import trimwright.practice.DrillRun;
import trimwright.practice.DrillSetup;
import trimwright.raceday.LoneBoatBook;
import trimwright.text.UserInputException;
import trimwright.units.Units;
import trimwright.weather.WaveSpec;

/** Drills sailed by computed hands: who knows more loses less, and the same seed is the same run. */
class DrillsTest {
    private static final BoatFile FILE = BoatFiles.find("whimbrel14");
    private static final WingSpec WING = FILE.boat().wings().get(0);

    @Test
    void theReferenceKeepsItsTargetInASteadyWind() {
        DrillResult up = sail(Drill.HOLD, Pilot.REFERENCE, 1);
        DrillResult down = sail(Drill.RUN, Pilot.REFERENCE, 1);
        // The targets come from a balance that knows nothing of time: two per cent of progress lost, or gained by
        // chance.
        assertEquals(0, up.lost() / up.seconds(), 0.02);
        assertEquals(0, down.lost() / down.seconds(), 0.02);
        assertEquals(0, up.touched());
    }

    /**
     * In turbulence, puffs and shifts: a computed crew stays on its foils and near its target both ways, so that no slow spell
     * comes of which nobody could say what began it. Bounds with room over what this crew does (no source).
     */
    @Test
    void theReferenceIsSteadyInGusts() {
        for (Drill drill : List.of(Drill.GUSTS, Drill.PUFFS)) {
            for (int seed = 1; seed <= 3; seed++) {
                DrillResult result = sail(drill, Pilot.REFERENCE, seed);
                String of = drill + " " + seed + ": ";
                assertTrue(result.lost() < 0.06 * result.seconds(), of + result.lost() + " s lost");
                assertTrue(result.touched() < 0.02 * result.seconds(), of + result.touched() + " s in the water");
                assertTrue(result.mostHeel() < Math.toRadians(6), of + Math.toDegrees(result.mostHeel()) + " deg");
            }
        }
    }

    /**
     * In a short sea, 0.3 m and 3 s, the computed crew keeps her on her foils, near her target, both ways. Bounds with room over
     * what this crew does (no source).
     */
    @Test
    void theReferenceHoldsInShortWaves() {
        for (Drill drill : List.of(Drill.HOLD, Drill.RUN)) {
            DrillResult flat = sail(drill, Pilot.REFERENCE, 1);
            for (int seed = 1; seed <= 2; seed++) {
                DrillResult result = sail(drill, Pilot.REFERENCE, seed, "0.3,3");
                String of = drill + " " + seed + ": ";
                assertEquals(DrillResult.End.SAILED, result.end());
                assertTrue(result.lost() < 0.04 * result.seconds(), of + result.lost() + " s lost");
                assertTrue(result.touched() < 0.04 * result.seconds(), of + result.touched() + " s in the water");
                assertEquals(flat.meanSpeed(), result.meanSpeed(), 0.02 * flat.meanSpeed(), of);
                assertNotEquals(flat, result);
            }
        }
    }

    @Test
    void wavesAreSaidAsTheyAreSailed() {
        assertNull(DrillSea.of("0"));
        assertEquals(new WaveSpec(0.3, 3, 0), DrillSea.of(" 0.3, 3 "));
        WaveSpec usual = Objects.requireNonNull(DrillSea.of("0.3"));
        // Deep water: a wave's length is g T^2 / (2 pi); a twenty-fifth of it high.
        assertEquals(0.3, 9.80665 * usual.period() * usual.period() / (2 * Math.PI) / 25, 1e-12);
        assertThrows(UserInputException.class, () -> DrillSea.of("0.3,"));
    }

    @Test
    void whoKnowsTheTargetsLosesLeastInGusts() {
        for (int seed = 1; seed <= 3; seed++) {
            double reference = sail(Drill.GUSTS, Pilot.REFERENCE, seed).lost();
            double feel = sail(Drill.GUSTS, Pilot.FEEL, seed).lost();
            assertTrue(reference < feel, "seed " + seed + ": " + reference + " and " + feel + " s");
        }
    }

    @Test
    void turnsAreToldByTheirWordAndCostWay() {
        DrillResult tack = sail(Drill.TACK, Pilot.REFERENCE, 1);
        assertEquals(2, tack.turns().size());
        assertEquals(10, tack.turns().get(0).word());
        tack.turns().forEach(turn -> assertTrue(turn.metres() > 10, turn.metres() + " m"));
        assertEquals(DrillResult.End.SAILED, tack.end());
    }

    @Test
    void aWingThatNobodyTouchesInATackEndsTheDrillAndCountsItsWholeLength() {
        DrillResult still = sail(Drill.TACK, Pilot.NONE, 1);
        assertEquals(DrillResult.End.CAPSIZED, still.end());
        assertTrue(still.seconds() < Drill.TACK.seconds());
        assertTrue(still.lost() > Drill.TACK.seconds() - still.seconds(), still.lost() + " s");
    }

    /** Who knows what the boat needs, who divides the way by the speed of now, who does nothing. */
    @Test
    void whoKnowsTheBoatsTimesLosesLeastAtAStart() {
        double byReference = 0;
        double byFeel = 0;
        double byNobody = 0;
        for (int seed = 1; seed <= 5; seed++) {
            DrillResult reference = sail(Drill.START, Pilot.REFERENCE, seed);
            byReference += reference.lost();
            byFeel += sail(Drill.START, Pilot.FEEL, seed).lost();
            byNobody += sail(Drill.START, Pilot.NONE, seed).lost();
            DrillResult.Started started = reference.started();
            assertTrue(started != null && started.late() >= 0 && started.metres() >= 0, "seed " + seed + started);
        }
        // Over seeds: who does not know the boat is early now and then, which costs most.
        assertTrue(byReference < byFeel && byFeel < byNobody, byReference + ", " + byFeel + ", " + byNobody + " s");
        assertNull(sail(Drill.HOLD, Pilot.NONE, 1).started());
    }

    @Test
    void theSameSeedIsTheSameRunOnAnyThread() {
        DrillResult here = sail(Drill.GUSTS, Pilot.FEEL, 7);
        List<CompletableFuture<DrillResult>> there = IntStream.range(0, 2)
                .mapToObj(i -> CompletableFuture.supplyAsync(() -> sail(Drill.GUSTS, Pilot.FEEL, 7)))
                .toList();
        there.forEach(run -> assertEquals(here, run.join()));
        assertNotEquals(here, sail(Drill.GUSTS, Pilot.FEEL, 8));
    }

    @Test
    void whatCannotBeSailedIsSaidInOneLine(@TempDir Path home) {
        for (String[] wrong : new String[][] {
            {"practice", "--drill", "loop"},
            {"practice", "--drill", "hold", "--pilot", "nobody"},
            {"practice", "--drill", "hold", "--tws", "4"},
            {"practice", "--drill", "hold", "--waves", "low"},
            {"practice", "--drill", "hold", "--waves", "0.3,"},
            {"practice", "--drill", "hold", "--waves", "0.3,3,1"},
            {"practice", "--drill", "hold", "--waves", "-0.3"},
            {"practice", "--drill", "hold", "--waves", "NaN"},
            {"practice", "--drill", "hold", "--waves", "3"},
            {"practice", "--drill", "hold", "--waves", "0.3,1"},
            {"practice", "--drill", "hold", "--waves", "0.3,12"},
        }) {
            CliRun run = CliRun.in(home, wrong);
            assertEquals(2, run.exit(), run.err());
            assertEquals(1, run.err().lines().count(), run.err());
            assertFalse(run.err().contains("Exception"), run.err());
        }
    }

    private static DrillResult sail(Drill drill, Pilot pilot, long seed) {
        return sail(drill, pilot, seed, "0");
    }

    private static DrillResult sail(Drill drill, Pilot pilot, long seed, String waves) {
        DrillSetup setup = DrillBoats.setup(drill, FILE, WING, LoneBoatBook.get(), Units.fromKnots(15), seed)
                .on(DrillSea.of(waves));
        return DrillRun.sail(setup, pilot.hand(setup));
    }
}
