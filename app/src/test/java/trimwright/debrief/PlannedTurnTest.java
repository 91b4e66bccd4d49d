package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.plans.KeptPlan;
import trimwright.plans.KeptPlans;
import trimwright.segment.TurnKind;
import trimwright.text.JsonOut;
import trimwright.text.UserInputException;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.turn.TurnBegin;
import trimwright.units.Units;
import trimwright.wind.SyntheticTrack;

/** A tack made by hand beside a plan written by hand. */
class PlannedTurnTest {
    /** Head to wind after three seconds, camber a second and a half later. */
    private static BoatTrack tack(String path) {
        return new SyntheticTrack(200, 10)
                .wind(t -> 8, t -> 0)
                .heading(t -> t < 60 ? -45 : t > 66 ? 45 : -45 + 15 * (t - 60))
                .speed(t -> t < 60 || t > 70 ? 10 : 8)
                .with(path, t -> Math.toRadians(t < 64.5 ? 25 : -25))
                .build();
    }

    private static ObjectNode plan(double wind) {
        ObjectNode document = JsonOut.document("turn-plan/1");
        document.put("boat", "demo").put("wing", "tall").put("kind", "tack").put("begin", "foils");
        document.put("tws_kn", wind);
        for (String form : List.of("full", "safe")) {
            ObjectNode plan = document.putObject(form).put("kept", false);
            for (String key : List.of("lead_s", "across_sheet_deg", "power_deg", "rate_deg_per_s", "exit_deg")) {
                plan.put(key, 1);
            }
            plan.put("ease_deg", -3).put("over_awa_deg", 0).put("on_angle_deg", 15);
            plan.put("build_ratio", 0.5)
                    .put("board_ratio", 0.9)
                    .put("height_more_m", 0)
                    .put("moment_ratio", 0.9);
            plan.putObject("sailed")
                    .put("logged_lost_low_m", 5)
                    .put("logged_lost_m", 9)
                    .put("logged_lost_high_m", 12);
        }
        return document;
    }

    private static KeptPlan kept(Path folder, double wind) {
        return KeptPlans.read(new KeptPlans(folder).keep(plan(wind)));
    }

    private static JsonNode compared(BoatTrack track, List<KeptPlan> plans) {
        DebriefReport report =
                Debrief.of(List.of(track), DebriefOptions.WITHOUT_BOAT).with(plans);
        JsonNode turn = JsonOut.read(JsonOut.text(TurnOverlay.of(report, TurnKind.TACK)))
                .path("turns")
                .get(0);
        return turn.path("plan");
    }

    @Test
    void whatWasDoneIsToldFromItsCueOn(@TempDir Path folder) {
        JsonNode plan = compared(tack(Paths.CAMBER), List.of(kept(folder, 15)));
        assertEquals(1.5, plan.path("camber_after_cue_s").asDouble(), 0.3);
        assertEquals(63, plan.path("wind_across_s").asDouble(), 0.2);
        assertTrue(plan.path("on_cue_s").asDouble() > 63.5, plan.toString());
        assertTrue(plan.path("sheet_after_cue_s").isNull());
        // At 8 m/s it loses 1.4 m a second on the old 7.1 m/s made good, from the swing's end to second 70 or 2 s
        // before; the swing gains 1 m.
        assertEquals(4, plan.path("lost_m").asDouble(), 1);
        assertEquals("less", plan.path("lost_is").asText(), plan.toString());
        assertTrue(plan.path("said").asText().contains("camber over 1."), plan.toString());
        assertTrue(plan.path("said").asText().contains("boards: cannot tell"), plan.toString());
    }

    @Test
    void whereNothingIsLoggedItCannotBeTold(@TempDir Path folder) {
        JsonNode plan = compared(tack(Paths.TWIST), List.of(kept(folder, 15)));
        for (String what : List.of("camber", "sheet", "ease", "boards")) {
            assertTrue(plan.path("cannot_tell").toString().contains(what), what + " in " + plan);
        }
    }

    @Test
    void aPlanForAnotherWindIsNotHeldAgainstIt(@TempDir Path folder) {
        // 8 m/s are 15.6 knots.
        assertTrue(compared(tack(Paths.CAMBER), List.of(kept(folder, 20))).isNull());
        assertTrue(compared(tack(Paths.CAMBER), List.of()).isNull());
    }

    @Test
    void aKeptPlanIsReadBack(@TempDir Path folder) throws IOException {
        KeptPlan plan = kept(folder, 15);
        assertEquals(List.of(plan), new KeptPlans(folder).list("demo", "tall"));
        assertEquals(List.of(), new KeptPlans(folder).list("demo", "short"));
        assertEquals(TurnBegin.FOILS, plan.begin());
        assertEquals(Units.fromDegrees(15), plan.moves().on(), 1e-12);
        assertEquals(0.9, plan.moves().conduct().board());
        Path other = folder.resolve("other.json");
        for (String wrong : List.of("no JSON", "{}", "{\"schema\": \"turn-plan/1\", \"boat\": \"x\"}")) {
            Files.writeString(other, wrong);
            String said = String.valueOf(Assertions.assertThrows(UserInputException.class, () -> KeptPlans.read(other))
                    .getMessage());
            assertEquals(1, said.lines().count());
            assertTrue(said.contains("other.json"), said);
        }
    }
}
