package trimwright.drills;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.crew.TurnConduct;
import trimwright.crew.TurnKind;
import trimwright.plans.KeptPlan;
import trimwright.practice.Drill;
import trimwright.practice.DrillMoment;
import trimwright.practice.DrillResult;
import trimwright.practice.DrillRun;
import trimwright.practice.DrillSetup;
import trimwright.raceday.LoneBoatBook;
import trimwright.text.JsonOut;
import trimwright.text.UserInputException;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnMoves;
import trimwright.units.Units;

/** A drill of gybes along a plan: cues come one after the other, and the plan's own hand acts by them. */
class CuedDrillTest {
    private static final BoatFile FILE = BoatFiles.find("whimbrel14");
    private static final WingSpec WING = FILE.boat().wings().get(0);
    private static final TurnMoves MOVES = new TurnMoves(
            0, rad(-4), rad(13), rad(9), rad(7), rad(13), new TurnConduct(rad(25), rad(10), 0.35, 0.1, 0.07, 0.93));

    private static KeptPlan plan(double windKn) {
        return new KeptPlan(
                "gybe.json",
                "",
                "Whimbrel 14",
                "tall",
                TurnKind.GYBE,
                TurnBegin.FOILS,
                Units.fromKnots(windKn),
                false,
                MOVES,
                null);
    }

    private static DrillSetup setup(Drill drill) {
        return DrillBoats.setup(drill, FILE, WING, LoneBoatBook.get(), Units.fromKnots(15), 1);
    }

    @Test
    void theNextCueIsToldAndThePlansHandActsByIt() {
        CuedDrill drill = new CuedDrill(setup(Drill.GYBE), plan(15));
        DrillRun run = drill.run(drill.hand());
        StringBuilder heard = new StringBuilder();
        @Nullable String last = null;
        while (!run.isOver()) {
            DrillMoment moment = run.step();
            drill.see(moment);
            String next = drill.next();
            if (next != null && !next.equals(last)) {
                heard.append(next).append('\n');
            }
            last = next;
        }
        List<String> said = heard.toString().lines().toList();
        assertEquals(10, said.size(), heard.toString());
        assertTrue(said.get(0).startsWith("Next: The driver's word. Haul the sheet 4 deg"), said.get(0));
        assertTrue(said.get(2).contains("13 deg, before it crosses the bow"), said.get(2));
        assertNull(drill.next());
        ObjectNode document = JsonOut.mapper().createObjectNode();
        drill.put(document);
        for (JsonNode turn : document.path("plan_cues")) {
            double cue = turn.path("over_s").asDouble();
            assertTrue(
                    turn.path("bow_s").asDouble() < cue
                            && cue < turn.path("on_s").asDouble(),
                    turn.toString());
            // A hand needs 0.25 to 0.4 s, the flap some tenths for its first three degrees.
            assertEquals(0.5, turn.path("camber_s").asDouble() - cue, 0.3, turn.toString());
        }
    }

    @Test
    void alongThePlanLessIsLost() {
        DrillSetup setup = setup(Drill.GYBE);
        CuedDrill drill = new CuedDrill(setup, plan(15));
        DrillResult planned = drill.sail(drill.hand());
        DrillResult usual = DrillRun.sail(setup, Pilot.REFERENCE.hand(setup));
        assertTrue(planned.lost() < usual.lost(), planned.lost() + " s, without " + usual.lost());
    }

    @Test
    void aPlanIsForItsTurnAndItsWind() {
        assertThrows(UserInputException.class, () -> new CuedDrill(setup(Drill.TACK), plan(15)));
        assertNotNull(CuedDrill.find(setup(Drill.GYBE), List.of(plan(20), plan(16))));
        assertNull(CuedDrill.find(setup(Drill.GYBE), List.of(plan(20))));
        assertNull(CuedDrill.find(setup(Drill.HOLD), List.of(plan(15))));
    }

    private static double rad(double degrees) {
        return Math.toRadians(degrees);
    }
}
