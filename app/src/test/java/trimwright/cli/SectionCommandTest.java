package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SectionCommandTest {
    @TempDir
    Path home;

    @Test
    void aProfileIsComputedAtEachAngle() throws JsonProcessingException {
        JsonNode points = json("section", "--profile", "NACA0015", "--alpha", "0:8:4", "--json")
                .path("points");
        assertEquals(3, points.size());
        assertEquals(0, points.get(0).path("lift_coefficient").asDouble(), 0.002);
        double lift = points.get(2).path("lift_coefficient").asDouble();
        double ideal = json("section", "--profile", "naca0015", "--alpha", "8", "--inviscid", "--json")
                .path("points")
                .get(0)
                .path("lift_coefficient")
                .asDouble();
        assertTrue(lift > 0.8 * ideal && lift < 0.97 * ideal, lift + " of " + ideal);
        assertTrue(points.get(2).path("drag_coefficient").asDouble() > 0.005);
        JsonNode element = points.get(2).path("elements").get(0);
        assertTrue(element.path("upper_transition_ratio").asDouble() < 0.2, element.toString());
        assertTrue(element.path("lower_transition_ratio").asDouble() > 0.8, element.toString());
    }

    @Test
    void linesForOtherProgramsHaveTheDocumentsKeys() {
        CliRun run = run("section", "--profile", "naca0012", "--alpha", "2,4", "--reynolds", "1e6", "--csv");
        List<String> lines = run.out().lines().toList();
        assertEquals(3, lines.size(), run.out() + run.err());
        assertTrue(lines.get(0).startsWith("alpha_deg,solved,lift_coefficient,drag_coefficient,"));
        assertEquals(lines.get(0).split(",", -1).length, lines.get(2).split(",", -1).length);
    }

    @Test
    void outlinesOfOnesOwnGiveWhatTheFamilyGives() throws IOException {
        // A flat-bottomed outline of 12 percent: the same file in metres and in chords must give the same coefficients.
        StringBuilder inChords = new StringBuilder("own outline\n");
        StringBuilder inMetres = new StringBuilder();
        for (int i = 0; i <= 80; i++) {
            double angle = Math.PI * (i - 40) / 40;
            double x = 0.5 * (1 - Math.cos(angle));
            double y = 0.12 * Math.sqrt(x) * (1 - x) * (angle < 0 ? 1.2 : -0.4);
            inChords.append(x).append(' ').append(y).append('\n');
            inMetres.append(2 * x).append(", ").append(2 * y).append('\n');
        }
        Path chords = Files.writeString(home.resolve("own.dat"), inChords);
        Path metres = Files.writeString(home.resolve("own.csv"), inMetres);
        String one = run("section", "--coordinates", chords.toString(), "--alpha", "3", "--inviscid", "--csv")
                .out();
        String other = run("section", "--coordinates", metres.toString(), "--alpha", "3", "--inviscid", "--csv")
                .out();
        assertEquals(2, one.lines().count(), one);
        assertEquals(one, other);
    }

    @Test
    void aBoatsSectionWithItsSlotLosesLiftToItsBoundaryLayers() throws JsonProcessingException {
        String[] wing = {"section", "--boat", "whimbrel14", "--camber", "15", "--alpha", "4", "--computed", "--json"};
        JsonNode point = json(wing).path("points").get(0);
        assertEquals(2, point.path("elements").size());
        double lift = point.path("lift_coefficient").asDouble();
        String[] ideal = Arrays.copyOf(wing, wing.length + 1);
        ideal[wing.length] = "--inviscid";
        double most = json(ideal).path("points").get(0).path("lift_coefficient").asDouble();
        assertTrue(lift > 0.8 * most && lift < 0.99 * most, lift + " of " + most);
    }

    /** Hoerner's plate of endless span abeam of the stream: 1/(0.222 + 0.283) = 1.98 (trimwright.section.Plate names the source). */
    @Test
    void pastStallItGoesOverToAPlateAndSaysSo() throws JsonProcessingException {
        JsonNode points = json("section", "--profile", "naca0012", "--alpha", "4,90,180", "--json")
                .path("points");
        assertEquals(0, points.get(0).path("caveats").size());
        JsonNode abeam = points.get(1);
        assertEquals("past_stall", abeam.path("caveats").path(0).asText());
        assertEquals(0, abeam.path("elements").size());
        assertEquals(1.98, abeam.path("drag_coefficient").asDouble(), 0.03);
        assertEquals(0, abeam.path("lift_coefficient").asDouble(), 0.01);
        assertEquals(0, points.get(2).path("lift_coefficient").asDouble(), 0.01);
        assertTrue(points.get(2).path("drag_coefficient").asDouble() > 0.002);
        String table = run("section", "--profile", "naca0012", "--alpha", "-60").out();
        assertTrue(table.contains("flat plate"), table);
    }

    @Test
    void whatIsWrongIsOneLine() throws IOException {
        Path words = Files.writeString(home.resolve("words.dat"), "1 0\n0.5 0.1\nnot a point\n");
        Path few = Files.writeString(home.resolve("few.dat"), "1 0\n0.5 0.1\n0 0\n0.5 -0.1\n1 0\n");
        wrong("0016x", "section", "--profile", "0016x", "--alpha", "2");
        wrong("--profile", "section", "--alpha", "2");
        wrong("--profile", "section", "--profile", "naca0012", "--boat", "whimbrel14", "--alpha", "2");
        wrong("line 3", "section", "--coordinates", words.toString(), "--alpha", "2");
        wrong("9 points", "section", "--coordinates", few.toString(), "--alpha", "2");
        wrong("no such file", "section", "--coordinates", home.resolve("none").toString(), "--alpha", "2");
        wrong("--alpha", "section", "--profile", "naca0012", "--alpha", "190");
        wrong("--reynolds", "section", "--profile", "naca0012", "--alpha", "4", "--reynolds", "0");
        wrong("--ncrit", "section", "--profile", "naca0012", "--alpha", "4", "--ncrit", "nan");
        wrong("--boat", "section", "--profile", "naca0012", "--alpha", "4", "--section", "computed");
        wrong("--camber", "section", "--boat", "whimbrel14", "--alpha", "4");
    }

    private void wrong(String named, String... args) {
        CliRun run = run(args);
        assertEquals(2, run.exit(), run.err());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains(named), run.err());
        assertEquals("", run.out());
    }

    private CliRun run(String... args) {
        return CliRun.in(home, args);
    }

    private JsonNode json(String... args) throws JsonProcessingException {
        CliRun run = run(args);
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out());
    }
}
