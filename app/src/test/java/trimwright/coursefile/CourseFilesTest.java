package trimwright.coursefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.course.Course;
import trimwright.course.Gate;
import trimwright.course.Mark;
import trimwright.course.Rounding;
import trimwright.text.UserInputException;

class CourseFilesTest {
    /** Wind from north: a line sailed to the north, a gate to windward, one mark, back to a finish to the south. */
    static final String GOOD = """
            schema = "course/1"
            name = "Race 1"
            gun_utc = "2026-06-12T15:00:00.5+02:00"
            order = "top, wing"
            [start]
            port_lat_deg = 31.2
            port_lon_deg = -41.502
            starboard_lat_deg = 31.2
            starboard_lon_deg = -41.500
            [[gate]]
            id = "top"
            port_lat_deg = 31.22
            port_lon_deg = -41.502
            starboard_lat_deg = 31.22
            starboard_lon_deg = -41.500
            [[mark]]
            id = "wing"
            lat_deg = 31.21
            lon_deg = -41.51
            leave = "starboard"
            [finish]
            port_lat_deg = 31.199
            port_lon_deg = -41.500
            starboard_lat_deg = 31.199
            starboard_lon_deg = -41.502
            [[boundary]]
            lat_deg = 31.19
            lon_deg = -41.52
            [[boundary]]
            lat_deg = 31.19
            lon_deg = -41.49
            [[boundary]]
            lat_deg = 31.23
            lon_deg = -41.50
            """;

    private static Course parse(String toml) {
        return CourseFiles.parse(toml.getBytes(StandardCharsets.UTF_8), "c.toml");
    }

    private static String faultOf(String toml) {
        return String.valueOf(
                assertThrows(UserInputException.class, () -> parse(toml)).getMessage());
    }

    @Test
    void everyKeyArrives() {
        Course course = parse(GOOD);
        assertEquals("Race 1", course.name());
        // 2026-06-12T13:00:00.5Z: 20616 days of 86400 s and 13 h.
        assertEquals((20616L * 86400 + 13 * 3600) * 1_000_000_000L + 500_000_000L, course.gunNanos());
        assertEquals(
                List.of("top", "wing"), course.order().stream().map(w -> w.id()).toList());
        Gate top = (Gate) course.order().get(0);
        assertEquals(Math.toRadians(-41.502), top.portMark().longitude(), 1e-12);
        assertEquals(Math.toRadians(31.22), top.starboardMark().latitude(), 1e-12);
        Mark wing = (Mark) course.order().get(1);
        assertEquals(Rounding.STARBOARD, wing.rounding());
        assertEquals(Math.toRadians(31.21), wing.position().latitude(), 1e-12);
        assertEquals(Math.toRadians(-41.500), course.finish().portEnd().longitude(), 1e-12);
        assertEquals(3, course.boundary().size());
    }

    @Test
    void aFaultSaysLineKeyAndWhatIsExpected() {
        assertEquals(
                "c.toml:3: gun_utc: \"yesterday\" is no time; write it as 2026-06-12T13:00:00Z",
                faultOf(GOOD.replace("2026-06-12T15:00:00.5+02:00", "yesterday")));
        assertTrue(faultOf(GOOD.replace("\"starboard\"", "\"left\"")).startsWith("c.toml:20: mark[0].leave: "));
        assertTrue(faultOf(GOOD.replace("lat_deg = 31.21\n", "lat_deg = 91.21\n"))
                .startsWith("c.toml:18: mark[0].lat_deg: "));
    }

    @Test
    void allFaultsComeAtOnce() {
        String text = faultOf(GOOD.replace("\"starboard\"", "\"left\"").replace("top, wing", "topp,wing"));
        assertEquals(2, text.lines().count(), text);
        assertTrue(text.contains("order: no mark or gate is called \"topp\"; maybe \"top\""), text);
    }

    @Test
    void exchangedEndsAreNamed() {
        String exchanged = GOOD.replace("31.199\nport_lon_deg = -41.500", "31.199\nport_lon_deg = -41.504");
        assertTrue(faultOf(exchanged).contains("c.toml:22: finish.port_lat_deg: "), faultOf(exchanged));
    }

    @Test
    void twoThingsOfOneNameAndHalfABoundaryAreNamed() {
        assertTrue(faultOf(GOOD.replace("id = \"wing\"", "id = \"top\"")).contains("gate[0].id: "));
        String half = GOOD.substring(0, GOOD.lastIndexOf("[[boundary]]"));
        assertTrue(faultOf(half).contains("boundary: 2 corners"), faultOf(half));
    }

    @Test
    void marksGatesAndBoundaryMayBeLeftOut() {
        String onlyGate = GOOD.replaceAll("(?s)\\[\\[mark\\]\\].*?(?=\\[finish)", "")
                .replace("top, wing", "top")
                .replaceAll("(?s)\\[\\[boundary\\]\\].*", "");
        Course course = parse(onlyGate);
        assertEquals(1, course.order().size());
        assertEquals(List.of(), course.boundary());
    }

    @Test
    void aRowNeedsAllItsKeysThoughTheListMayBeLeftOut() {
        assertTrue(faultOf(GOOD.replace("leave = \"starboard\"\n", "")).contains("mark[0].leave: missing"));
    }

    @Test
    void whatIsWrittenIsReadBack() {
        Course course = parse(GOOD);
        Course again = parse(CourseText.of(course));
        assertEquals(
                course.order().stream().map(w -> w.id()).toList(),
                again.order().stream().map(w -> w.id()).toList());
        assertEquals(course.gunNanos(), again.gunNanos());
        assertEquals(
                course.boundary().get(2).latitude(), again.boundary().get(2).latitude(), 1e-9);
        assertEquals(
                course.start().portEnd().longitude(), again.start().portEnd().longitude(), 1e-9);
    }
}
