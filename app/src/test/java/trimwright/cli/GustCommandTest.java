package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GustCommandTest {
    @TempDir
    Path home;

    private JsonNode json(String... args) throws JsonProcessingException {
        CliRun run = CliRun.in(home, args);
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void theDocumentHoldsBothTargetsAndTheTrimAfter() throws JsonProcessingException {
        JsonNode gust = json("gust", "--boat", "whimbrel14", "--tws", "14", "--change", "2", "--json");
        assertEquals("gust/1", gust.path("schema").asText());
        assertTrue(gust.path("caution").asText().length() > 20);
        assertEquals(2, gust.path("points").size());
        JsonNode after = json("targets", "--boat", "whimbrel14", "--tws", "14:16:2", "--json")
                .path("points");
        for (JsonNode point : gust.path("points")) {
            JsonNode row = point.path("gusts").path(0);
            assertTrue(row.path("jump_nm").asDouble() > 0);
            assertEquals(3, row.path("acts").size());
            assertTrue(List.of("sheet", "camber", "twist")
                    .contains(row.path("first").asText()));
            assertTrue(
                    row.path("nobody_moves").path("heel_after_one_second_deg").isNumber());
            assertEquals(3, row.path("in_time").size());
            for (JsonNode shape : row.path("in_time")) {
                for (String hands : List.of("nobody_moves", "first_act")) {
                    assertTrue(shape.path(hands).path("heel_least_deg").isNumber(), shape.toString());
                }
            }
            assertEquals(row.path("nobody_moves"), row.path("in_time").path(0).path("nobody_moves"));
            // A gust comes by itself and with a shift to either side.
            assertEquals(3, point.path("gusts").size());
            assertEquals(0, row.path("shift_deg").asDouble());
            assertEquals(-5, point.path("gusts").path(1).path("shift_deg").asDouble(), 1e-9);
            JsonNode steady = row.path("steady");
            JsonNode target = find(after, point.path("mode").asText(), 16);
            for (String key : List.of("twa_deg", "boat_speed_kn", "camber_deg", "twist_deg", "sheet_deg")) {
                assertEquals(target.path(key).asDouble(), steady.path(key).asDouble(), 1e-9, key);
            }
        }
    }

    private static JsonNode find(JsonNode points, String mode, double tws) {
        for (JsonNode point : points) {
            if (point.path("mode").asText().equals(mode) && point.path("tws_kn").asDouble() == tws) {
                return point;
            }
        }
        throw new AssertionError("no target " + mode + " at " + tws);
    }

    @Test
    void whatIsTypedWronglyIsOneLine() {
        for (String[] wrong : new String[][] {
            {"--tws", "0"},
            {"--tws", "8:12:2"},
            {"--twa", "20"},
            {"--change", "4,2"},
            {"--change", "0"},
            {"--change", "-14"},
            {"--shift", "5,-5"},
            {"--shift", "30"}
        }) {
            CliRun run = CliRun.in(home, "gust", "--boat", "whimbrel14", wrong[0], wrong[1]);
            assertEquals(2, run.exit(), String.join(" ", wrong));
            assertEquals(1, run.err().lines().count(), run.err());
            assertEquals("", run.out());
        }
    }
}
