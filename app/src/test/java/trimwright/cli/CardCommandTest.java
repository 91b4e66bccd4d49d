package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardCommandTest {
    private static final String NUMBER = "(-?\\d+(?:\\.\\d)?)";

    /** A band in marks, the degrees beside it. */
    private static final String MARKED = NUMBER + " to " + NUMBER + " \\(" + NUMBER + "\u00b0\\)";

    /** Two lines a wind, as they stand on the page from left to right. */
    private static final Pattern ROW = Pattern.compile(NUMBER + " " + NUMBER + " " + NUMBER + " " + NUMBER + " "
            + NUMBER + " " + NUMBER + " kN\\R(foiling|on hulls)(?: +[a-z]+)? " + NUMBER + "\u00b0 TWA " + MARKED
            + " " + NUMBER + " to " + NUMBER + " " + MARKED + " " + NUMBER + " kN m");

    @TempDir
    Path home;

    private CliRun run(String... args) {
        return CliRun.in(home, args);
    }

    private static String textOf(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    @Test
    void whatIsPrintedIsWhatTargetsSay() throws IOException {
        Path file = home.resolve("card.pdf");
        CliRun run = run(
                "card",
                "--boat",
                "whimbrel14",
                "--tws",
                "8,14",
                "--date",
                "2027-03-06",
                "--out",
                file.toString(),
                "--json");
        assertEquals(0, run.exit(), run.err());
        JsonNode card = new ObjectMapper().readTree(run.out());
        assertEquals("card/1", card.path("schema").asText());
        assertEquals(3, card.path("sides").asInt());
        JsonNode points = new ObjectMapper()
                .readTree(run("targets", "--boat", "whimbrel14", "--tws", "8,14", "--json")
                        .out())
                .path("points");
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertEquals(3, document.getNumberOfPages());
            compare(textOf(document, 1), "upwind", points);
            compare(textOf(document, 2), "downwind", points);
            compare(textOf(document, 3), "fastest reach on the foils", points);
        }
    }

    private static void compare(String page, String mode, JsonNode points) {
        for (String part : List.of(
                "Whimbrel 14, wing tall: " + mode,
                "2027-03-06",
                "Caution",
                "crew's judgement",
                "whimbrel14",
                "Trimwright",
                "equations")) {
            assertTrue(page.replaceAll("\\R", " ").contains(part), part + " in " + page);
        }
        List<MatchResult> rows = ROW.matcher(page).results().toList();
        // In 8 kn nothing holds her up on any reach, and the side says so.
        boolean isReach = mode.contains("reach");
        assertEquals(isReach ? 1 : 2, rows.size(), page);
        assertEquals(isReach, page.contains("8 no target on the foils"), page);
        for (MatchResult row : rows) {
            double wind = Double.parseDouble(row.group(1));
            JsonNode target = isReach ? fastest(points, wind) : find(points, mode, wind);
            assertShown(target.path("boat_speed_kn"), row.group(2));
            assertEquals(target.path("camber_starboard_mark").asDouble(), Double.parseDouble(row.group(3)), 1e-6);
            assertShown(target.path("twist_deg"), row.group(4));
            assertEquals(target.path("sheet_port_mark").asDouble(), Double.parseDouble(row.group(5)), 1e-6);
            assertEquals(target.path("sheet_load_n").asDouble() / 1000, Double.parseDouble(row.group(6)), 0.0501);
            assertEquals(target.path("foiling").asBoolean(), row.group(7).equals("foiling"));
            assertShown(target.path("twa_deg"), row.group(8));
            assertEquals(target.path("camber_low_port_mark").asDouble(), Double.parseDouble(row.group(9)), 1e-6);
            assertEquals(target.path("camber_high_port_mark").asDouble(), Double.parseDouble(row.group(10)), 1e-6);
            assertShown(target.path("camber_deg"), row.group(11));
            assertShown(target.path("twist_low_deg"), row.group(12));
            assertShown(target.path("twist_high_deg"), row.group(13));
            assertEquals(target.path("sheet_low_starboard_mark").asDouble(), Double.parseDouble(row.group(14)), 1e-6);
            assertEquals(target.path("sheet_high_starboard_mark").asDouble(), Double.parseDouble(row.group(15)), 1e-6);
            assertShown(target.path("sheet_deg"), row.group(16));
            assertEquals(target.path("righting_moment_nm").asDouble() / 1000, Double.parseDouble(row.group(17)), 0.501);
            // The marks of the demo boat's camber, by hand: 12 degrees are 4 steps, 38 are 14.
            double camber = target.path("camber_deg").asDouble();
            double steps = camber < 12 ? camber / 3 : 4 + (camber - 12) * 10 / 26;
            assertEquals(Math.rint(2 * steps) / 2, Double.parseDouble(row.group(3)), 1e-6);
        }
    }

    /** Equal to the decimals that are printed; a thousandth more for the document's own rounding. */
    private static void assertShown(JsonNode exact, String printed) {
        double half = printed.contains(".") ? 0.05 : 0.5;
        assertTrue(exact.isNumber());
        assertEquals(exact.asDouble(), Double.parseDouble(printed), half + 0.001);
    }

    private static JsonNode find(JsonNode points, String mode, double tws) {
        for (JsonNode point : points) {
            if (point.path("mode").asText().equals(mode) && point.path("tws_kn").asDouble() == tws) {
                return point;
            }
        }
        throw new AssertionError("no target " + mode + " at " + tws);
    }

    private static JsonNode fastest(JsonNode points, double tws) {
        JsonNode fastest = null;
        for (JsonNode point : points) {
            boolean isReach = point.path("mode").asText().equals("angle")
                    && point.path("foiling").asBoolean()
                    && point.path("tws_kn").asDouble() == tws
                    && point.path("boat_speed_kn").isNumber();
            if (isReach
                    && (fastest == null
                            || point.path("boat_speed_kn").asDouble()
                                    > fastest.path("boat_speed_kn").asDouble())) {
                fastest = point;
            }
        }
        assertNotNull(fastest, "no reach on the foils at " + tws);
        return fastest;
    }

    @Test
    void whatIsTypedWronglyIsOneLine() {
        String missing = home.resolve("no").resolve("card.pdf").toString();
        for (String[] wrong : new String[][] {
            {"--tws", "6:26:2"}, {"--sides", "left"}, {"--date", "6.3.2027"}, {"--tws", "x"}, {"--sides", "upwind"}
        }) {
            CliRun run = run("card", "--boat", "whimbrel14", "--out", missing, wrong[0], wrong[1]);
            assertEquals(2, run.exit(), String.join(" ", wrong));
            assertEquals(1, run.err().lines().count(), run.err());
            assertEquals("", run.out());
        }
    }
}
