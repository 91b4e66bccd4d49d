package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WingCommandsTest {
    @TempDir
    Path home;

    @Test
    void aSectionIsOneJsonDocument() throws JsonProcessingException {
        JsonNode json = json(
                "section",
                "--boat",
                "whimbrel14",
                "--station",
                "0.5",
                "--alpha",
                "4",
                "--camber",
                "20",
                "--reynolds",
                "1.5e6",
                "--json");
        assertEquals("section/1", json.path("schema").asText());
        assertEquals(13, json.path("height_above_foot_m").asDouble());
        double ratio = json.path("lift_coefficient").asDouble()
                / json.path("drag_coefficient").asDouble();
        assertEquals(ratio, json.path("lift_over_drag_ratio").asDouble(), 0.02);
        assertTrue(json.path("stall_margin_deg").asDouble() > 0);
    }

    @Test
    void aWingIsTheSameOnBothTacks() throws JsonProcessingException {
        JsonNode starboard = wing("20");
        JsonNode port = wing("-20");
        for (String key : new String[] {"drive_force_n", "side_force_n", "heeling_moment_nm", "sheet_load_n"}) {
            assertEquals(starboard.path(key).asDouble(), port.path(key).asDouble(), 0.11, key);
            assertTrue(starboard.path(key).asDouble() > 0, key);
        }
        assertEquals(40, starboard.path("strips").size());
    }

    @Test
    void whatCannotBeSetIsOneLine() {
        CliRun run = CliRun.in(
                home, "wing", "--boat", "whimbrel14", "--aws", "30", "--awa", "20", "--camber", "50", "--sheet", "6");
        assertEquals(2, run.exit());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains("--camber 50"), run.err());
    }

    @Test
    void peopleReadATableWithTheCaution() {
        CliRun run = CliRun.in(
                home,
                "wing",
                "--boat",
                "whimbrel14",
                "--aws",
                "30",
                "--awa",
                "20",
                "--camber",
                "15",
                "--twist",
                "8",
                "--sheet",
                "6");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("drive, N"), run.out());
        assertTrue(run.out().contains("estimates"), run.out());
    }

    private JsonNode wing(String awa) throws JsonProcessingException {
        return json(
                "wing",
                "--boat",
                "whimbrel14",
                "--wing",
                "tall",
                "--aws",
                "30",
                "--awa",
                awa,
                "--camber",
                "15",
                "--twist",
                "8",
                "--sheet",
                "8",
                "--heel",
                "2",
                "--json");
    }

    private JsonNode json(String... args) throws JsonProcessingException {
        CliRun run = CliRun.in(home, args);
        assertEquals(0, run.exit(), run.err());
        assertEquals("", run.err());
        return new ObjectMapper().readTree(run.out());
    }
}
