package trimwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
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

/** One beat in a north wind at 10 m/s, north-east, then a tack at 100 s over 9 s, then north-west. */
class TurnLabelsTest {
    private static final int RATE = 5;
    private static final LocalPlane PLANE = new LocalPlane(new Position(Math.toRadians(31), Math.toRadians(-41)));

    private static Position at(double north, double east) {
        return PLANE.toEarth(new PlanePoint(north, east));
    }

    private static double heading(double t) {
        return 45 - Math.max(0, Math.min(90, 10 * (t - 100)));
    }

    /** Places every 0.2 s by adding up the steps. */
    private static double[][] path(double seconds) {
        int n = (int) Math.round(seconds * RATE) + 1;
        double[][] path = new double[2][n];
        for (int i = 1; i < n; i++) {
            double h = Math.toRadians(heading((i - 0.5) / RATE));
            path[0][i] = path[0][i - 1] + 10 * Math.cos(h) / RATE;
            path[1][i] = path[1][i - 1] + 10 * Math.sin(h) / RATE;
        }
        return path;
    }

    private static WindTrack track(double[][] path, DoubleUnaryOperator heading, double speed) {
        BoatTrack track = new SyntheticTrack(200, RATE)
                .heading(heading)
                .speed(t -> speed)
                .with(Paths.LATITUDE, t -> at(path[0][at(t)], path[1][at(t)]).latitude())
                .with(Paths.LONGITUDE, t -> at(path[0][at(t)], path[1][at(t)]).longitude())
                .build();
        SessionClock clock = SessionClock.covering(track.startNanos(), track.endNanos(), RATE);
        return SailedWind.of(track, clock, null, WindOptions.DEFAULT);
    }

    private static int at(double t) {
        return (int) Math.round(t * RATE);
    }

    /** A course with its gate so far up, and its boundary so far to the east. */
    private static Course course(double gate, double east) {
        return new Course(
                "made",
                SyntheticTrack.START,
                new Line(at(100, -500), at(100, 500)),
                List.of(new Gate("top", at(gate, -1500), at(gate, 1500))),
                new Line(at(0, 100), at(0, -100)),
                List.of(at(-300, -2000), at(-300, east), at(5000, east), at(5000, -2000)));
    }

    private static @Nullable TurnLabel label(Course course, @Nullable WindTrack theirs) {
        double[][] path = path(200);
        WindTrack own = track(path, TurnLabelsTest::heading, 10);
        CourseGeometry geometry = new CourseGeometry(course);
        BowTrack bow = BowTrack.of(own, geometry.plane(), null);
        List<OnCourse.Neighbour> others = new ArrayList<>();
        if (theirs != null) {
            others.add(new OnCourse.Neighbour(theirs, BowTrack.of(theirs, geometry.plane(), null)));
        }
        SailedCourse sailed = CourseFollower.of(own, bow, geometry, course.gunNanos());
        Pieces pieces = Cutting.of(own, new FoilingRule.NotTold(), new OnCourse(geometry, bow, sailed, others));
        assertEquals(1, pieces.turns().size());
        return pieces.turns().get(0).label();
    }

    // At 100 s the boat is 707 m north and 707 m east of where it began.

    @Test
    void withNothingNearTheTurnIsFree() {
        assertEquals(TurnLabel.FREE, label(course(3000, 1500), null));
    }

    @Test
    void theEdgeAheadForcesIt() {
        // 50 m to the east are 71 m on the way, 7 s.
        assertEquals(TurnLabel.BOUNDARY, label(course(3000, 757), null));
        // 100 m are 14 s.
        assertEquals(TurnLabel.FREE, label(course(3000, 807), null));
    }

    @Test
    void aLegThatEndsInItMakesItARounding() {
        assertEquals(TurnLabel.MARK, label(course(730, 1500), null));
        // 63 m further north the turn is nearly done: it was made to come there.
        assertEquals(TurnLabel.FREE, label(course(770, 1500), null));
    }

    /** With the wind from port she keeps clear of a boat that has it from starboard. */
    @Test
    void aBoatOnACollidingWayIsTraffic() {
        assertEquals(TurnLabel.TRAFFIC, label(course(3000, 1900), meeting(105, -45, 10)));
        assertEquals(TurnLabel.FREE, label(course(3000, 1900), meeting(130, -45, 10)));
    }

    /** A faster boat on the same tack comes up from astern: from leeward, then from windward, where it keeps clear itself. */
    @Test
    void aBoatThatKeepsClearItselfForcesNoTurn() {
        assertEquals(TurnLabel.TRAFFIC, label(course(3000, 1900), meeting(105, 60, 16)));
        assertEquals(TurnLabel.FREE, label(course(3000, 1900), meeting(105, 75, 16)));
    }

    /** A boat on that course (deg) at that speed (m/s) that would meet this one, had it held on, at that second. */
    private static WindTrack meeting(double second, double course, double speed) {
        double[][] other = new double[2][200 * RATE + 1];
        double place = 10 * second * Math.sqrt(0.5);
        for (int i = 0; i < other[0].length; i++) {
            double toGo = speed * (second - (double) i / RATE);
            other[0][i] = place - toGo * Math.cos(Math.toRadians(course));
            other[1][i] = place - toGo * Math.sin(Math.toRadians(course));
        }
        return track(other, t -> course, speed);
    }

    @Test
    void beforeTheStartNothingIsSaid() {
        Course later = course(3000, 1500);
        assertNull(label(
                new Course(
                        later.name(),
                        SyntheticTrack.START + 150_000_000_000L,
                        new Line(at(1200, -900), at(1200, 900)),
                        later.order(),
                        later.finish(),
                        later.boundary()),
                null));
    }
}
