package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boatfile.BoatFiles;

class LoadsCommandTest {
    @TempDir
    Path home;

    private CliRun run(String... args) {
        return CliRun.in(home, args);
    }

    @Test
    void theDocumentSaysWhatTheBookSays() throws IOException {
        CliRun run = run("loads", "--boat", "whimbrel14", "--tws", "14", "--fitness", "80,100", "--json");
        assertEquals(0, run.exit(), run.err());
        JsonNode loads = new ObjectMapper().readTree(run.out());
        assertEquals("loads/1", loads.path("schema").asText());
        assertEquals(16, loads.path("model").path("boat_hash").asText().length());
        assertTrue(loads.path("caution").asText().length() > 20);
        JsonNode upwind = loads.path("rows").path(0);
        JsonNode target = new ObjectMapper()
                .readTree(run("targets", "--boat", "whimbrel14", "--tws", "14", "--json")
                        .out())
                .path("points")
                .path(0);
        assertEquals("upwind", upwind.path("mode").asText());
        for (String key : List.of("twa_deg", "boat_speed_kn", "camber_deg", "sheet_deg")) {
            assertEquals(target.path(key).asDouble(), upwind.path(key).asDouble(), 1e-9, key);
        }
        double load = target.path("sheet_load_n").asDouble();
        // The flow is found anew, so the last decimal may differ.
        assertEquals(load, upwind.path("sheet_load_n").asDouble(), 1e-4 * load);
        assertTrue(upwind.path("cambers").size() >= 4);
        JsonNode accounts = loads.path("accounts");
        assertEquals(2, accounts.size());
        assertTrue(accounts.path(0).path("turns_per_lap").asInt()
                <= accounts.path(1).path("turns_per_lap").asInt());
        JsonNode full = accounts.path(1);
        assertEquals(6, full.path("haul_speeds").size());
        for (JsonNode speed : full.path("haul_speeds")) {
            assertTrue(speed.path("kept_up_deg_per_s").asDouble()
                    <= speed.path("burst_deg_per_s").asDouble());
        }
        assertEquals(full.path("turn_steps").size(), full.path("savings").size());
        assertTrue(full.path("cheapest_saving").asText().length() > 2);
        for (JsonNode camber : upwind.path("cambers")) {
            assertTrue(camber.path("sheet_load_n").asDouble()
                    <= loads.path("sheet_load_max_n").asDouble() * (1 + 1e-6));
        }
    }

    @Test
    void aFileThatDoesNotSayWhoGrindsIsOneLine() throws IOException {
        String text = BoatFiles.shippedText("whimbrel14");
        Path file = home.resolve("quiet.toml");
        Files.writeString(file, text.substring(0, text.indexOf("[handling]")));
        CliRun run = run("loads", "--boat", file.toString(), "--tws", "14");
        assertEquals(2, run.exit(), run.out());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains("[handling]"), run.err());
    }

    @Test
    void whatIsTypedWronglyIsOneLine() {
        for (String[] wrong : new String[][] {
            {"--tws", "0"}, {"--lap", "0"}, {"--lap", "x"}, {"--fitness", "100,80"}, {"--fitness", "500"}
        }) {
            CliRun run = run("loads", "--boat", "whimbrel14", wrong[0], wrong[1]);
            assertEquals(2, run.exit(), String.join(" ", wrong));
            assertEquals(1, run.err().lines().count(), run.err());
            assertEquals("", run.out());
        }
    }
}
