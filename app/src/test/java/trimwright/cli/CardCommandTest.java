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

    /** Two lines a wind, as they stand on the page from left to right; what lies above the aim in brackets. */
    private static final Pattern ROW = Pattern.compile(NUMBER + " " + NUMBER + " " + NUMBER + " " + NUMBER + " "
            + NUMBER + " " + NUMBER + " kN\\R(foiling|on hulls)(?: +[a-z]+)? " + NUMBER + "\u00b0 (?:TWA|\\(" + NUMBER
            + "\\)) " + MARKED + " " + NUMBER + " to " + NUMBER + " " + MARKED + " " + NUMBER + "(?: \\(" + NUMBER
            + "\\))? kN m");

    /** Changes in marks, or in degrees where the control bears none; below, the control with the degrees. */
    private static final Pattern GUST_ROW =
            Pattern.compile(NUMBER + " (\\S+) (\\S+) (\\S+) (\\S+)\\R(?:foiling|on hulls) ((?:ease|haul|more|less).*)");

    private static final Pattern GUST_ACT =
            Pattern.compile("(ease|haul|more|less) (sheet|camber|twist)(?: \\(([+-]\\d+\\.\\d)\u00b0\\))?");

    private static final Pattern LOAD_ROW = Pattern.compile(NUMBER + " " + NUMBER + " " + NUMBER + " s " + NUMBER + " "
            + NUMBER + " s (\\d+)\\R" + NUMBER + " % of most all out " + NUMBER + " s " + NUMBER + " % of most all out "
            + NUMBER + " s (\\d+), (\\d+), (\\d+)");

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
        assertEquals(6, card.path("sides").asInt());
        assertEquals(0.08, card.path("turbulence_ratio").asDouble(), 1e-9);
        JsonNode points = new ObjectMapper()
                .readTree(run("targets", "--boat", "whimbrel14", "--tws", "8,14", "--json")
                        .out())
                .path("points");
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertEquals(6, document.getNumberOfPages());
            compare(textOf(document, 1), "upwind", points);
            compare(textOf(document, 2), "downwind", points);
            compare(textOf(document, 3), "fastest reach on the foils", points);
            compareGusts(textOf(document, 4), "upwind");
            compareGusts(textOf(document, 5), "downwind");
            compareLoads(textOf(document, 6));
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
            // Large the aim; in brackets the target where it lies above.
            String speed = shown(target, "boat_speed_kn", "aim_boat_speed_kn");
            assertShown(target.path(speed), row.group(2));
            assertEquals(steps(target.path(shown(target, "camber_deg", "aim_camber_deg"))), number(row, 3), 1e-6);
            String camberMark = shown(target, "camber_starboard_mark", "aim_camber_starboard_mark");
            assertEquals(target.path(camberMark).asDouble(), number(row, 3), 1e-6);
            assertShown(target.path(shown(target, "twist_deg", "aim_twist_deg")), row.group(4));
            assertEquals(tape(target.path(shown(target, "sheet_deg", "aim_sheet_deg"))), number(row, 5), 1e-6);
            String load = shown(target, "sheet_load_n", "sheet_load_aim_n");
            assertEquals(target.path(load).asDouble() / 1000, number(row, 6), 0.0501);
            assertEquals(target.path("foiling").asBoolean(), row.group(7).equals("foiling"));
            assertShown(target.path(shown(target, "twa_deg", "aim_twa_deg")), row.group(8));
            if (row.group(9) != null) {
                assertShown(target.path("boat_speed_kn"), row.group(9));
                assertTrue(number(row, 9) > number(row, 2), "the limit is faster");
            }
            assertEquals(target.path("camber_low_port_mark").asDouble(), number(row, 10), 1e-6);
            assertEquals(target.path("camber_high_port_mark").asDouble(), number(row, 11), 1e-6);
            assertShown(target.path(shown(target, "camber_deg", "aim_camber_deg")), row.group(12));
            assertShown(target.path("twist_low_deg"), row.group(13));
            assertShown(target.path("twist_high_deg"), row.group(14));
            assertEquals(target.path("sheet_low_starboard_mark").asDouble(), number(row, 15), 1e-6);
            assertEquals(target.path("sheet_high_starboard_mark").asDouble(), number(row, 16), 1e-6);
            assertShown(target.path(shown(target, "sheet_deg", "aim_sheet_deg")), row.group(17));
            String moment = shown(target, "righting_moment_nm", "righting_moment_aim_nm");
            assertEquals(target.path(moment).asDouble() / 1000, number(row, 18), 0.501);
            if (row.group(19) != null) {
                assertEquals(target.path("righting_moment_nm").asDouble() / 1000, number(row, 19), 0.501);
                assertTrue(number(row, 19) > number(row, 18), "the aim is below the limit");
            }
        }
    }

    private static String shown(JsonNode target, String key, String aim) {
        return target.path(aim).isNumber() ? aim : key;
    }

    private static double number(MatchResult row, int group) {
        return Double.parseDouble(row.group(group));
    }

    /** The marks of the demo boat's camber, by hand: 12 degrees are 4 steps, 38 are 14. */
    private static double steps(JsonNode degrees) {
        double camber = degrees.asDouble();
        return Math.rint(2 * (camber < 12 ? camber / 3 : 4 + (camber - 12) * 10 / 26)) / 2;
    }

    /** Those of its sheet: from 30 on the centreline to 18 at 20 degrees and none at 60. */
    private static double tape(JsonNode degrees) {
        double sheet = degrees.asDouble();
        return Math.rint(2 * (sheet < 20 ? 30 - 0.6 * sheet : 18 - 0.45 * (sheet - 20))) / 2;
    }

    private void compareGusts(String page, String mode) throws IOException {
        assertTrue(page.contains("Whimbrel 14, wing tall: gusts " + mode), page);
        List<MatchResult> rows = GUST_ROW.matcher(page).results().toList();
        assertEquals(2, rows.size(), page);
        for (MatchResult row : rows) {
            CliRun run = run("gust", "--boat", "whimbrel14", "--tws", row.group(1), "--shift", "0", "--json");
            JsonNode point =
                    find(new ObjectMapper().readTree(run.out()).path("points"), mode, Double.parseDouble(row.group(1)));
            List<MatchResult> acts = GUST_ACT.matcher(row.group(6)).results().toList();
            assertEquals(4, acts.size(), page);
            double[] changes = {-4, 2, 4, 6};
            for (int i = 0; i < changes.length; i++) {
                JsonNode gust = gust(point, changes[i]);
                JsonNode act = act(gust);
                assertEquals(act.path("control").asText(), acts.get(i).group(2));
                boolean isMore = List.of("ease", "more").contains(acts.get(i).group(1));
                assertEquals(act.path("change_deg").asDouble() > 0, isMore, page);
                String marks = act.path("change_marks").asText();
                if (marks.isEmpty()) {
                    assertShown(act.path("change_deg"), row.group(2 + i).replace("\u00b0", ""));
                } else {
                    assertEquals(marks.split(" ", 2)[0], row.group(2 + i));
                    assertShown(act.path("change_deg"), acts.get(i).group(3));
                }
            }
        }
    }

    private static JsonNode gust(JsonNode point, double change) {
        for (JsonNode gust : point.path("gusts")) {
            if (gust.path("change_kn").asDouble() == change) {
                return gust;
            }
        }
        throw new AssertionError("no gust of " + change);
    }

    private static JsonNode act(JsonNode gust) {
        for (JsonNode act : gust.path("acts")) {
            if (act.path("control").asText().equals(gust.path("first").asText())) {
                return act;
            }
        }
        throw new AssertionError("no first act");
    }

    private void compareLoads(String page) throws IOException {
        assertTrue(page.contains("Whimbrel 14, wing tall: loads and grinders"), page);
        List<MatchResult> rows = LOAD_ROW.matcher(page).results().toList();
        assertEquals(2, rows.size(), page);
        JsonNode loads = new ObjectMapper()
                .readTree(run("loads", "--boat", "whimbrel14", "--tws", "8,14", "--json")
                        .out());
        double most = loads.path("sheet_load_max_n").asDouble();
        for (MatchResult row : rows) {
            double wind = number(row, 1);
            for (int side = 0; side < 2; side++) {
                JsonNode own = find(loads.path("rows"), side == 0 ? "upwind" : "downwind", wind);
                double load = own.path("sheet_load_n").asDouble();
                assertEquals(load / 1000, number(row, 2 + 2 * side), 0.0501);
                assertShown(own.path("haul_kept_up_s"), row.group(3 + 2 * side));
                assertEquals(100 * load / most, number(row, 7 + 2 * side), 0.501);
                assertShown(own.path("haul_all_out_s"), row.group(8 + 2 * side));
            }
            int[] shares = {60, 80, 100};
            for (int i = 0; i < shares.length; i++) {
                int turns = turns(loads.path("accounts"), wind, shares[i]);
                assertEquals(turns, Integer.parseInt(row.group(11 + i)));
                assertTrue(shares[i] < 100 || turns == Integer.parseInt(row.group(6)), page);
            }
        }
    }

    private static int turns(JsonNode accounts, double wind, int percent) {
        for (JsonNode account : accounts) {
            boolean isFit = Math.abs(account.path("fitness_ratio").asDouble() - percent / 100.0) < 1e-6;
            if (isFit && account.path("tws_kn").asDouble() == wind) {
                return account.path("turns_per_lap").asInt();
            }
        }
        throw new AssertionError("no account at " + wind);
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
