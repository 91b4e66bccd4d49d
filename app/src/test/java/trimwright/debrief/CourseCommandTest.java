package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.cli.CliRun;

/** A course given on import or for one debrief, by a boat that sails due north at 10 m/s. */
class CourseCommandTest {
    /** Length of a degree of latitude at 31.2 degrees on WGS 84 (m): pi/180 a (1 - e2) / (1 - e2 sin2)^(3/2). */
    private static final double DEGREE = 110_874.6;

    private static final double LINE = 31.2;

    @TempDir
    Path home;

    /** From 200 m before the line at 12:00:00: over it at 20 s, at the gate 500 m beyond at 70 s. */
    private static String log() {
        StringBuilder text = new StringBuilder();
        for (int t = 0; t < 120; t++) {
            double latitude = LINE + (10.0 * t - 200) / DEGREE;
            int degrees = (int) latitude;
            String body = String.format(
                    Locale.ROOT,
                    "GPRMC,12%02d%02d.00,A,%02d%08.5f,N,04130.00000,W,19.438,0.0,120626,,,A",
                    t / 60,
                    t % 60,
                    degrees,
                    60 * (latitude - degrees));
            int sum = 0;
            for (int i = 0; i < body.length(); i++) {
                sum ^= body.charAt(i);
            }
            text.append(String.format(Locale.ROOT, "$%s*%02X\r\n", body, sum));
        }
        return text.toString();
    }

    private static String course(String gun, double gate) {
        String line =
                "port_lat_deg = %1$.8f\nport_lon_deg = -41.501\nstarboard_lat_deg = %1$.8f\nstarboard_lon_deg = -41.499\n";
        return "schema = \"course/1\"\nname = \"Race 1\"\ngun_utc = \"" + gun + "\"\norder = \"top\"\n[start]\n"
                + String.format(Locale.ROOT, line, LINE)
                + "[finish]\n"
                + String.format(Locale.ROOT, line, LINE + 2000 / DEGREE)
                + "[[gate]]\nid = \"top\"\n"
                + String.format(Locale.ROOT, line, LINE + gate / DEGREE);
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(home.resolve(name), text);
    }

    private CliRun run(String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(List.of("--library", home.resolve("library").toString()));
        return CliRun.in(home, all.toArray(String[]::new));
    }

    private JsonNode debrief(String... more) throws IOException {
        List<String> all = new ArrayList<>(List.of("debrief", "latest", "--json"));
        all.addAll(List.of(more));
        CliRun run = run(all.toArray(String[]::new));
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void aCourseImportedWithTheLogsIsKeptAndAnotherMayBeTaken() throws IOException {
        Path log = write("dunlin.nmea", log());
        Path course = write("course.toml", course("2026-06-12T12:00:10Z", 500));
        CliRun run = run("import", log.toString(), "--course", course.toString());
        assertEquals(0, run.exit(), run.err());
        JsonNode boat = debrief().path("boats").get(0);
        assertEquals(10, boat.path("start").path("crossed_s").asDouble(), 0.2);
        assertEquals(100, boat.path("start").path("distance_m").asDouble(), 1);
        JsonNode leg = boat.path("legs").get(0);
        assertEquals("start", leg.path("from").asText());
        assertEquals("top", leg.path("to").asText());
        assertEquals(50, leg.path("duration_s").asDouble(), 1);
        assertEquals(0, leg.path("strip").path("made_m").get(0).asDouble(), 10);
        assertEquals(400, leg.path("strip").path("made_m").get(20).asDouble(), 15);
        assertFalse(boat.path("legs").get(1).path("ended").asBoolean());
        assertEquals("Race 1", debrief().path("course").path("name").asText());
        Path longer = write("longer.toml", course("2026-06-12T12:00:05Z", 700));
        JsonNode other = debrief("--course", longer.toString()).path("boats").get(0);
        assertEquals(15, other.path("start").path("crossed_s").asDouble(), 0.2);
        assertEquals(70, other.path("legs").get(0).path("duration_s").asDouble(), 1);
        assertEquals(
                10,
                debrief().path("boats").get(0).path("start").path("crossed_s").asDouble(),
                0.2);
    }

    @Test
    void aCourseMayComeAfterItsLogsAndTheLastOneCounts() throws IOException {
        Path log = write("dunlin.nmea", log());
        assertEquals(0, run("import", log.toString()).exit());
        assertTrue(debrief().path("course").isNull());
        Path course = write("course.toml", course("2026-06-12T12:00:10Z", 500));
        assertEquals(
                0, run("import", log.toString(), "--course", course.toString()).exit());
        Path second = write("second.toml", course("2026-06-12T12:00:12Z", 500));
        assertEquals(
                0, run("import", log.toString(), "--course", second.toString()).exit());
        assertEquals(
                8,
                debrief().path("boats").get(0).path("start").path("crossed_s").asDouble(),
                0.2);
    }

    @Test
    void aFaultInTheCourseIsOneLineAndNothingIsImported() throws IOException {
        Path log = write("dunlin.nmea", log());
        Path course = write("course.toml", course("noon", 500));
        CliRun run = run("import", log.toString(), "--course", course.toString());
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("course.toml:3: gun_utc: "), run.err());
        assertFalse(Files.exists(home.resolve("library").resolve("library.json")));
        CliRun missing =
                run("debrief", "latest", "--course", home.resolve("none.toml").toString());
        assertEquals(2, missing.exit());
    }

    @Test
    void theTextSaysHowTheStartWas() throws IOException {
        Path log = write("dunlin.nmea", log());
        Path course = write("course.toml", course("2026-06-12T12:00:10Z", 500));
        run("import", log.toString(), "--course", course.toString());
        String text = run("debrief", "latest").out();
        assertTrue(
                text.contains("Start: on the line 10.0 s after the gun; at the gun 100 m before it at 19.4 kn"), text);
        assertTrue(text.contains("start to top"), text);
    }
}
