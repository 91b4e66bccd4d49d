package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.course.Course;
import trimwright.course.Gate;
import trimwright.course.Line;
import trimwright.course.Position;
import trimwright.text.JsonOut;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.wind.SyntheticTrack;
import trimwright.wind.WindOptions;

/** A boat that sails north at 10 m/s straight at a line that she meets 4 s after the gun. */
class StartOverlayTest {
    private static final double SPEED = 10;
    private static final double GUN = 100;
    private static final double LATE = 4;
    /** Metres to a radian of latitude near the equator (WGS 84: a (1 - e^2)). */
    private static final double RADIUS = 6_335_439;

    private static Position at(double north, double east) {
        return new Position(north / RADIUS, -0.6 + east / 6_378_137);
    }

    private static JsonNode boat() {
        BoatTrack track = new SyntheticTrack(300, 10)
                .wind(t -> 8, t -> 90)
                .heading(t -> 0)
                .speed(t -> SPEED)
                .with(Paths.LATITUDE, t -> at(SPEED * (t - GUN - LATE), 25).latitude())
                .with(Paths.LONGITUDE, t -> at(0, 25).longitude())
                .with(Paths.SHEET, t -> Math.toRadians(-12))
                .build();
        Course course = new Course(
                "made",
                SyntheticTrack.START + (long) (GUN * 1e9),
                new Line(at(0, -50), at(0, 50)),
                List.of(new Gate("top", at(1500, -200), at(1500, 200))),
                new Line(at(0, 200), at(0, 100)),
                List.of());
        DebriefReport report = Debrief.of(List.of(track), new DebriefOptions(null, null, course, WindOptions.DEFAULT));
        return JsonOut.read(JsonOut.text(StartOverlay.of(report)));
    }

    private static JsonNode at(JsonNode document, String row, double seconds) {
        int i = (int) Math.round(
                (seconds + StartOverlay.BEFORE) / document.path("step_s").asDouble());
        return document.path("starts").get(0).path("values").path(row).get(i);
    }

    @Test
    void metresAndSecondsToTheLineAreThoseOfTheWayLeft() {
        JsonNode document = boat();
        assertEquals(GUN, document.path("starts").get(0).path("at_s").asDouble(), 0.05);
        assertEquals(LATE, document.path("starts").get(0).path("crossed_s").asDouble(), 0.1);
        for (double seconds : new double[] {-60, -20, 0, 3}) {
            assertEquals(
                    SPEED * (LATE - seconds), at(document, "line_m", seconds).asDouble(), 0.6);
            assertEquals(LATE - seconds, at(document, "to_line_s", seconds).asDouble(), 0.1);
        }
        assertEquals(0.75, at(document, "along_ratio", 0).asDouble(), 0.01);
        assertEquals(SPEED * 3600 / 1852, at(document, "boat_speed_kn", 0).asDouble(), 0.01);
        assertEquals(12, at(document, "sheet_deg", 0).asDouble(), 0.01);
    }

    @Test
    void beyondTheLineMetresAreNegativeAndNoSecondsAreLeft() {
        JsonNode document = boat();
        assertEquals(-SPEED * 6, at(document, "line_m", 10).asDouble(), 0.6);
        assertTrue(at(document, "to_line_s", 10).isNull());
    }
}
