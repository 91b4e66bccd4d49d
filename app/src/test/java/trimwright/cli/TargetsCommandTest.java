package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boatfile.BoatFiles;

class TargetsCommandTest {
    private static final Set<String> LIMITS = Set.of(
            "righting_moment",
            "elevator_down_force",
            "cavitation_main",
            "cavitation_elevator",
            "ventilation",
            "camber_max",
            "twist_max",
            "sheet_load",
            "stall_margin",
            "speed_limit");

    @TempDir
    Path home;

    private CliRun targets(String... more) {
        return targetsIn(home, more);
    }

    private static CliRun targetsIn(Path home, String... more) {
        List<String> args = new java.util.ArrayList<>(List.of("targets", "--boat", "whimbrel14", "--wing", "tall"));
        args.addAll(List.of(more));
        return CliRun.in(home, home.resolve("cache"), args.toArray(String[]::new));
    }

    private static JsonNode json(CliRun run) throws JsonProcessingException {
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void theDocumentHasTheContractsKeys() throws JsonProcessingException {
        JsonNode book = json(targets("--tws", "14", "--twa", "60:110:25", "--json"));
        assertEquals("target-book/1", book.path("schema").asText());
        assertEquals("whimbrel14", book.path("boat").asText());
        assertEquals("tall", book.path("wing").asText());
        assertEquals(16, book.path("model").path("boat_hash").asText().length());
        JsonNode points = book.path("points");
        assertEquals(5, points.size());
        assertEquals("upwind", points.path(0).path("mode").asText());
        assertEquals("downwind", points.path(4).path("mode").asText());
        JsonNode reach = points.path(3);
        for (String key : List.of(
                "tws_kn",
                "twa_deg",
                "boat_speed_kn",
                "vmg_kn",
                "awa_deg",
                "aws_kn",
                "camber_deg",
                "camber_low_deg",
                "camber_high_deg",
                "twist_deg",
                "twist_low_deg",
                "twist_high_deg",
                "sheet_deg",
                "sheet_low_deg",
                "sheet_high_deg",
                "heel_deg",
                "ride_height_m",
                "leeway_deg",
                "sheet_load_n",
                "righting_moment_ratio",
                "camber_off_one_loss_kn",
                "twist_tenth_low_deg",
                "sheet_three_tenths_high_deg",
                "sheet_alone_tenth_deg",
                "camber_flat_top_deg",
                "sheet_per_camber_ratio",
                "gain_righting_moment_kn")) {
            assertTrue(reach.path(key).isNumber(), key);
        }
        assertTrue(reach.path("foiling").asBoolean());
        double alone = Math.abs(reach.path("sheet_alone_tenth_deg").asDouble());
        double held = reach.path("sheet_tenth_high_deg").asDouble()
                - reach.path("sheet_tenth_low_deg").asDouble();
        assertTrue(4 * alone < held, "the sheet alone is the dearest: " + alone + " deg, held " + held);
        assertTrue(reach.path("gain_righting_moment_kn").asDouble() > 0.005, "righting moment binds");
        // Where moment binds the aim is below it, and not for nothing.
        double carried = reach.path("righting_moment_aim_nm").asDouble()
                / reach.path("righting_moment_nm").asDouble();
        assertTrue(carried > 0.6 && carried < 0.99, reach.toString());
        double lost = reach.path("aim_lost_kn").asDouble();
        assertTrue(lost > 0.1, reach.toString());
        // It can be sailed: a trim of its own, its speed less by what it costs.
        assertEquals(
                reach.path("boat_speed_kn").asDouble() - lost,
                reach.path("aim_boat_speed_kn").asDouble(),
                2e-3);
        for (String key : List.of("aim_camber_deg", "aim_twist_deg", "aim_sheet_deg", "aim_heel_deg")) {
            assertTrue(reach.path(key).isNumber(), key);
        }
        assertTrue(reach.path("sheet_load_aim_n").asDouble()
                <= reach.path("sheet_load_n").asDouble());
        assertEquals(0.08, book.path("turbulence_ratio").asDouble(), 1e-9);
        assertTrue(reach.path("vmg_kn").asDouble() < 0, "downwind speed made good is negative");
        for (JsonNode limit : reach.path("limits")) {
            assertTrue(LIMITS.contains(limit.asText()), limit.asText());
        }
    }

    @Test
    void aPointThatCannotBeReachedSaysWhy() throws JsonProcessingException {
        JsonNode points =
                json(targets("--tws", "9", "--twa", "100,165", "--json")).path("points");
        JsonNode deep = points.path(2);
        assertEquals(165, deep.path("twa_deg").asDouble(), 1e-9);
        assertTrue(!deep.path("solved").asBoolean(true)
                && deep.path("reason").asText().length() > 10);
    }

    @Test
    void aHeldControlStaysAndCosts() throws JsonProcessingException {
        JsonNode free = json(targets("--tws", "14", "--twa", "100", "--json"))
                .path("points")
                .path(1);
        JsonNode held = json(targets("--tws", "14", "--twa", "100", "--fix", "camber=12", "--json"))
                .path("points")
                .path(1);
        assertEquals(12, held.path("camber_deg").asDouble(), 1e-9);
        assertEquals(12, held.path("camber_low_deg").asDouble(), 1e-9);
        assertTrue(held.path("boat_speed_kn").asDouble()
                < free.path("boat_speed_kn").asDouble());
    }

    /** A book of a boat that is hurt must not pass for the book of a sound one. */
    @Test
    void theDocumentSaysWhatIsStuck() throws JsonProcessingException {
        String[] sound = {"--tws", "14", "--twa", "100", "--json"};
        assertTrue(json(targets(sound)).path("fixed").isMissingNode());
        JsonNode hurt =
                json(targets("--tws", "14", "--twa", "100", "--fix", "twist=20", "--fix", "board=down", "--json"));
        assertEquals(20, hurt.path("fixed").path("twist_deg").asDouble(), 1e-9);
        assertEquals("down", hurt.path("fixed").path("board").asText());
        assertEquals(20, hurt.path("points").path(1).path("twist_deg").asDouble(), 1e-9);
    }

    @Test
    void theTableAndTheValuesHaveOneLineAPoint() {
        CliRun table = targets("--tws", "14", "--twa", "100", "--costs");
        assertTrue(table.out().contains("What being off costs"), table.out());
        assertEquals(0, table.exit(), table.err());
        assertTrue(table.out().contains("crew's judgement"), table.out());
        CliRun csv = targets("--tws", "14", "--twa", "100", "--csv");
        List<String> lines = csv.out().lines().toList();
        assertEquals(4, lines.size());
        Set<Integer> widths = new TreeSet<>();
        lines.forEach(line -> widths.add(line.replaceAll("\"[^\"]*\"", "").split(",", -1).length));
        assertEquals(1, widths.size(), csv.out());
    }

    @Test
    void fromTheCacheItSaysTheSameAsFresh(@TempDir Path other) throws IOException {
        List<String> asked = List.of("--tws", "14", "--twa", "60:110:25");
        String[] json = Stream.concat(asked.stream(), Stream.of("--json")).toArray(String[]::new);
        String[] csv = Stream.concat(asked.stream(), Stream.of("--csv")).toArray(String[]::new);
        String freshJson = targetsIn(home, json).out();
        String freshCsv = targetsIn(other, csv).out();
        assertEquals(freshJson, targetsIn(home, json).out());
        assertEquals(freshCsv, targetsIn(home, csv).out());
        try (Stream<Path> files = Files.list(home.resolve("cache").resolve("targets"))) {
            assertEquals(1, files.count(), "one book for both forms");
        }
    }

    @Test
    void whatIsTypedWronglyIsOneLine() {
        for (String[] wrong : new String[][] {
            {"--tws", "6:26"},
            {"--tws", "80"},
            {"--twa", "90,60"},
            {"--fix", "camber"},
            {"--fix", "camber=50"},
            {"--fix", "jib=3"},
            {"--fix", "board=up"},
            {"--fix", "camber=12", "--fix", "camber=14"},
            {"--fix", "camber=5", "--fix", "twist=30"},
            {"--section", "measured"},
            {"--csv", "--json"}
        }) {
            CliRun run = targets(wrong);
            assertEquals(2, run.exit(), String.join(" ", wrong));
            assertEquals(1, run.err().lines().count(), run.err());
            assertEquals("", run.out());
        }
    }

    @Test
    void aWingWithoutASlotHasNoTables(@TempDir Path folder) throws IOException {
        String toml = BoatFiles.find("whimbrel14").text().replace("slot_gap_ratio = 0.012", "slot_gap_ratio = 0.0");
        Path file = Files.writeString(folder.resolve("sealed.toml"), toml);
        CliRun run = CliRun.in(
                home, "targets", "--boat", file.toString(), "--tws", "14", "--twa", "100", "--section", "computed");
        assertEquals(2, run.exit(), run.err());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains("closed-form"), run.err());
    }

    @Test
    void noTargetAtAllIsNoAnswer() {
        CliRun run = targets("--tws", "3", "--twa", "172");
        assertEquals(3, run.exit(), run.out());
        // Slow machines also see a line of progress.
        assertEquals(
                1,
                run.err().lines().filter(line -> !line.startsWith("Targets:")).count(),
                run.err());
    }
}
