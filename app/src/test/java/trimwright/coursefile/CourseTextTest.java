package trimwright.coursefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.course.Course;
import trimwright.course.Gate;
import trimwright.course.Line;
import trimwright.course.Mark;
import trimwright.course.Position;
import trimwright.course.Rounding;
import trimwright.keyfile.KeyFile;

class CourseTextTest {
    private static final Course COURSE = new Course(
            "Race \"1\"",
            1_804_334_400_000_000_000L,
            new Line(at(-40, 179.9999), at(-40, -179.9999)),
            List.of(
                    new Mark("reach", at(-40.01, 179.99), Rounding.PORT),
                    new Gate("top", at(-39.98, 179.999), at(-39.98, -179.999)),
                    new Mark("reach", at(-40.01, 179.99), Rounding.PORT)),
            new Line(at(-40.02, 179.9), at(-40.02, 179.91)),
            List.of());

    @Test
    void whatIsWrittenHasNoFaultAgainstTheTableOfKeys() {
        KeyFile file = KeyFile.read(CourseText.of(COURSE), CourseKeys.TABLE, name -> null);
        assertEquals(List.of(), file.faults());
        assertEquals("Race \"1\"", file.values().getText("name"));
        assertEquals("2027-03-06T12:00:00Z", file.values().getText("gun_utc"));
        assertEquals("reach, top, reach", file.values().getText("order"));
        assertEquals(Math.toRadians(-179.9999), file.values().number("start.starboard_lon_deg"), 1e-11);
    }

    @Test
    void aMarkRoundedTwiceStandsOnce() {
        KeyFile file = KeyFile.read(CourseText.of(COURSE), CourseKeys.TABLE, name -> null);
        assertEquals(1, file.values().list("mark").size());
        assertEquals("port", file.values().list("mark").get(0).getText("leave"));
        assertTrue(file.values().list("boundary").isEmpty());
    }

    private static Position at(double latitude, double longitude) {
        return new Position(Math.toRadians(latitude), Math.toRadians(longitude));
    }
}
