package trimwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.course.Course;
import trimwright.course.CourseGeometry;
import trimwright.course.Gate;
import trimwright.course.Line;
import trimwright.course.LocalPlane;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.SyntheticTrack;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/**
 * A beat in a north wind at 10 m/s: north-east for 100 s, a tack, north-west for 100 s, then in 15 s down to 30 deg wider and
 * straight on so for 40 s. Whether that is straight sailing or gathering speed is told by where the leg ends.
 */
class LayingTest {
    private static final int RATE = 5;
    private static final double END = 264;
    private static final LocalPlane PLANE = new LocalPlane(new Position(Math.toRadians(31), Math.toRadians(-41)));

    private static double heading(double t) {
        return t < 209 ? 45 - Math.max(0, Math.min(90, 10 * (t - 100))) : -45 - Math.min(30, 2 * (t - 209));
    }

    private static double[][] path() {
        int n = (int) Math.round(END * RATE) + 1;
        double[][] path = new double[2][n];
        for (int i = 1; i < n; i++) {
            double h = Math.toRadians(heading((i - 0.5) / RATE));
            path[0][i] = path[0][i - 1] + 10 * Math.cos(h) / RATE;
            path[1][i] = path[1][i - 1] + 10 * Math.sin(h) / RATE;
        }
        return path;
    }

    private static Position at(double north, double east) {
        return PLANE.toEarth(new PlanePoint(north, east));
    }

    /** Phases where the gate lies so far north. */
    private static List<Phase> phases(double gate) {
        double[][] path = path();
        BoatTrack made = new SyntheticTrack(END, RATE)
                .heading(LayingTest::heading)
                .with(
                        Paths.LATITUDE,
                        t -> at(path[0][index(t)], path[1][index(t)]).latitude())
                .with(
                        Paths.LONGITUDE,
                        t -> at(path[0][index(t)], path[1][index(t)]).longitude())
                .build();
        SessionClock clock = SessionClock.covering(made.startNanos(), made.endNanos(), RATE);
        WindTrack track = SailedWind.of(made, clock, null, WindOptions.DEFAULT);
        Course course = new Course(
                "made",
                SyntheticTrack.START,
                new Line(at(100, -500), at(100, 500)),
                List.of(new Gate("top", at(gate, -1500), at(gate, 1500))),
                new Line(at(0, 100), at(0, -100)),
                List.of(at(-300, -2000), at(-300, 2000), at(5000, 2000), at(5000, -2000)));
        CourseGeometry geometry = new CourseGeometry(course);
        BowTrack bow = BowTrack.of(track, geometry.plane(), null);
        SailedCourse sailed = CourseFollower.of(track, bow, geometry, course.gunNanos());
        return Cutting.of(track, new FoilingRule.NotTold(), new OnCourse(geometry, bow, sailed, List.of()))
                .phases();
    }

    private static int index(double t) {
        return (int) Math.round(t * RATE);
    }

    @Test
    void straightAtTheMarkIsStraightSailingAtAnyAngle() {
        double top = path()[0][index(262)];
        List<Phase> phases = phases(top);
        Span last = phases.get(phases.size() - 1).span();
        assertEquals(262, last.to() / (double) RATE, 1.0);
        assertTrue(last.contains(index(230)) && last.contains(index(250)), "last phase " + last);
    }

    @Test
    void theSameInTheMiddleOfALegIsNot() {
        for (Phase phase : phases(4000)) {
            assertTrue(phase.span().to() <= index(216), "phase " + phase.span());
        }
    }
}
