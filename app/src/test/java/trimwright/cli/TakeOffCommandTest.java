package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TakeOffCommandTest {
    @TempDir
    Path home;

    @Test
    void theDocumentSaysWhereSheTakesOffAndWhetherItPays() throws JsonProcessingException {
        CliRun run = CliRun.in(home, "takeoff", "--boat", "whimbrel14", "--tws", "10", "--json");
        assertEquals(0, run.exit(), run.err());
        JsonNode document = new ObjectMapper().readTree(run.out());
        assertEquals("takeoff/1", document.path("schema").asText());
        assertTrue(document.path("caution").asText().length() > 20);
        JsonNode row = document.path("rows").path(0);
        assertTrue(row.path("takes_off_twa_deg").size() > 0);
        assertTrue(row.path("takes_off_twa_deg").size()
                < row.path("foiling_twa_deg").size());
        assertEquals(
                row.path("takes_off_twa_deg").path(0).asDouble(),
                row.path("from_beat").path("twa_deg").asDouble(),
                1e-9);
        assertTrue(row.path("from_beat").path("takes_off").asBoolean());
        double gain = row.path("downwind").path("foiling_gains_kn").asDouble();
        double onFoils =
                row.path("downwind").path("on_foils").path("made_good_kn").asDouble();
        double onHulls =
                row.path("downwind").path("on_hulls").path("made_good_kn").asDouble();
        // Each has three decimals in the document.
        assertEquals(onFoils - onHulls, gain, 0.002);
        assertTrue(document.path("stays_up_from").path("tws_kn").asDouble() < 10);
    }

    @Test
    void aTakeOffInTimeSaysWhatItCostsAndALullWhenToSettle() throws JsonProcessingException {
        CliRun run = CliRun.in(home, "takeoff", "--boat", "whimbrel14", "--tws", "10,12", "--json");
        assertEquals(0, run.exit(), run.err());
        JsonNode upwind =
                new ObjectMapper().readTree(run.out()).path("rows").path(1).path("upwind");
        JsonNode path = upwind.path("take_off");
        assertTrue(
                path.path("up_after_s").asDouble() < path.path("done_after_s").asDouble());
        assertTrue(
                path.path("pays_after_s").asDouble() > path.path("done_after_s").asDouble());
        assertTrue(upwind.path("on_hulls").path("crew_place_m").isNumber());
        // A second foil down is more in the water than it is worth on a beat: each shaft bears half, at its own
        // friction.
        double both = upwind.path("on_hulls").path("both_boards_gain_kn").asDouble();
        assertTrue(both < 0 && both > -5, upwind.toString());
        JsonNode lull = upwind.path("lull");
        assertEquals(10, lull.path("tws_kn").asDouble(), 1e-6);
        assertEquals("after", lull.path("settle").asText());
        double lost = lull.path("on_hulls").path("made_good_kn").asDouble()
                - lull.path("on_foils").path("made_good_kn").asDouble();
        double settle = path.path("spent_m").asDouble() / (lost * 1852 / 3600);
        assertEquals(settle, lull.path("settle_after_s").asDouble(), 0.01 * settle);
    }

    @Test
    void inADriftNothingHoldsHerUpAndThatIsAnAnswer() {
        CliRun run = CliRun.in(home, "takeoff", "--boat", "whimbrel14", "--tws", "4");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("In none of these winds"), run.out());
        assertEquals(
                2,
                CliRun.in(home, "takeoff", "--boat", "whimbrel14", "--tws", "12:6:1")
                        .exit());
    }
}
