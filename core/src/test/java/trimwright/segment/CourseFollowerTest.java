package trimwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.boat.Antenna;
import trimwright.course.Course;
import trimwright.course.CourseGeometry;
import trimwright.course.Gate;
import trimwright.course.Line;
import trimwright.course.LocalPlane;
import trimwright.course.Mark;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.course.Rounding;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.SyntheticTrack;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/** A boat at 10 m/s on straight ways, so that each crossing happens at a second that can be told by head. */
class CourseFollowerTest {
    private static final int RATE = 5;
    private static final LocalPlane PLANE = new LocalPlane(new Position(Math.toRadians(31), Math.toRadians(-41)));

    /** Gun at 30 s; line across north, 0 to 200 m east; gate 1000 m up; mark 500 m up and 600 m east; finish at -100 m. */
    private static final Course COURSE = new Course(
            "made",
            SyntheticTrack.START + 30_000_000_000L,
            new Line(at(0, 0), at(0, 200)),
            List.of(new Gate("top", at(1000, 50), at(1000, 150)), new Mark("side", at(500, 600), Rounding.STARBOARD)),
            new Line(at(-100, 150), at(-100, 50)),
            List.of(at(-300, -400), at(-300, 900), at(1400, 900), at(1400, -400)));

    private static Position at(double north, double east) {
        return PLANE.toEarth(new PlanePoint(north, east));
    }

    /** The way: points and the second at which the bow is there; straight between. */
    private record Way(double[] seconds, double[] north, double[] east) {
        double north(double t) {
            return at(north, t);
        }

        double east(double t) {
            return at(east, t);
        }

        /** Direction (deg). */
        double heading(double t) {
            int k = leg(t);
            return Math.toDegrees(Math.atan2(east[k + 1] - east[k], north[k + 1] - north[k]));
        }

        private int leg(double t) {
            int k = 0;
            while (k < seconds.length - 2 && t >= seconds[k + 1]) {
                k++;
            }
            return k;
        }

        private double at(double[] values, double t) {
            int k = leg(t);
            return values[k] + (values[k + 1] - values[k]) * (t - seconds[k]) / (seconds[k + 1] - seconds[k]);
        }
    }

    private static WindTrack track(Way way, double ahead) {
        SyntheticTrack made = new SyntheticTrack(way.seconds[way.seconds.length - 1], RATE)
                .heading(way::heading)
                .with(Paths.LATITUDE, t -> antenna(way, t, ahead).latitude())
                .with(Paths.LONGITUDE, t -> antenna(way, t, ahead).longitude());
        BoatTrack track = made.build();
        SessionClock clock = SessionClock.covering(track.startNanos(), track.endNanos(), RATE);
        return SailedWind.of(track, clock, null, WindOptions.DEFAULT);
    }

    /** Place of an antenna that lies so far behind the bow. */
    private static Position antenna(Way way, double t, double ahead) {
        double heading = Math.toRadians(way.heading(t));
        return at(way.north(t) - ahead * Math.cos(heading), way.east(t) - ahead * Math.sin(heading));
    }

    private static SailedCourse follow(WindTrack track, @Nullable Antenna antenna) {
        CourseGeometry geometry = new CourseGeometry(COURSE);
        return CourseFollower.of(track, BowTrack.of(track, geometry.plane(), antenna), geometry, COURSE.gunNanos());
    }

    /** North over the line at 40 s, through the gate at 140 s, past the mark from the far side, home over the finish. */
    private static final Way ROUND =
            new Way(new double[] {0, 160, 240, 300, 400}, new double[] {-400, 1200, 500, 400, -200}, new double[] {
                100, 100, 700, 650, 20
            });

    @Test
    void startRoundingsAndFinishComeAtTheirSeconds() {
        SailedCourse sailed = follow(track(ROUND, 0), null);
        SailedCourse.Start start = sailed.start();
        assertNotNull(start);
        assertEquals(10, start.crossed(), 0.05);
        assertEquals(100, start.distance(), 0.5);
        assertEquals(10, start.speed(), 0.01);
        assertEquals(0.5, start.share(), 0.01);
        assertFalse(start.isEarly());
        assertEquals(3, sailed.legs().size());
        assertEquals(40 * RATE, sailed.legs().get(0).span().from(), 1);
        assertEquals(140 * RATE, sailed.legs().get(0).span().to(), 1);
        assertEquals(
                List.of("start", "top"),
                List.of(
                        sailed.legs().get(0).leg().from(),
                        sailed.legs().get(0).leg().to()));
        // Home at -100 m: of the last way 500 of 600 m are behind it.
        assertEquals(
                (300 + 100 * 500 / 600.0) * RATE, sailed.legs().get(2).span().to(), 1);
        assertTrue(sailed.legs().get(2).isEnded());
    }

    @Test
    void anAntennaBehindTheBowCrossesLaterThanTheBow() {
        WindTrack track = track(ROUND, 12);
        SailedCourse.Start byBow = follow(track, new Antenna(12, 0)).start();
        SailedCourse.Start byAntenna = follow(track, null).start();
        assertNotNull(byBow);
        assertNotNull(byAntenna);
        assertEquals(10, byBow.crossed(), 0.05);
        assertEquals(11.2, byAntenna.crossed(), 0.05);
    }

    @Test
    void aBoatOverTheLineAtTheGunThatComesBackStartsThen() {
        // Over at 20 s, back behind at 50 s, over again at 70 s.
        Way way = new Way(new double[] {0, 30, 60, 80, 200}, new double[] {-200, 100, -100, 100, 1300}, new double[] {
            100, 100, 100, 100, 100
        });
        SailedCourse.Start start = follow(track(way, 0), null).start();
        assertNotNull(start);
        assertTrue(start.isEarly());
        assertEquals(-100, start.distance(), 2.5);
        assertEquals(40, start.crossed(), 0.1);
    }

    @Test
    void aBoatThatNeverComesToTheLineSailsNoLeg() {
        Way away = new Way(new double[] {0, 100}, new double[] {-400, -1400}, new double[] {100, 100});
        SailedCourse sailed = follow(track(away, 0), null);
        assertNull(sailed.start());
        assertEquals(List.of(), sailed.legs());
    }

    @Test
    void aLegThatIsNotEndedGoesOnToTheEnd() {
        Way way = new Way(new double[] {0, 100}, new double[] {-400, 600}, new double[] {100, 100});
        SailedCourse sailed = follow(track(way, 0), null);
        assertEquals(1, sailed.legs().size());
        assertFalse(sailed.legs().get(0).isEnded());
        assertEquals(100 * RATE + 1, sailed.legs().get(0).span().to());
    }

    @Test
    void aBowThatTurnsJustBeforeTheGateHasBeenThere() {
        // Up to 1 m before the gate at 139.9 s, then away to the side and over the line of the mark.
        Way way = new Way(
                new double[] {0, 139.9, 160, 240}, new double[] {-400, 999, 900, 450}, new double[] {100, 100, 160, 700
                });
        SailedCourse sailed = follow(track(way, 0), null);
        assertTrue(sailed.legs().get(0).isEnded());
        assertEquals(139.9 * RATE, sailed.legs().get(0).span().to(), 1);
        Way far = new Way(
                new double[] {0, 139, 160, 240}, new double[] {-400, 990, 900, 450}, new double[] {100, 100, 160, 700});
        assertFalse(follow(track(far, 0), null).legs().get(0).isEnded());
    }

    @Test
    void aGapOnTheLineIsBridged() {
        Way way = ROUND;
        SyntheticTrack made = new SyntheticTrack(400, RATE)
                .heading(way::heading)
                .with(
                        Paths.LATITUDE,
                        t -> t > 38 && t < 43 ? Double.NaN : antenna(way, t, 0).latitude())
                .with(Paths.LONGITUDE, t -> antenna(way, t, 0).longitude());
        BoatTrack built = made.build();
        SessionClock clock = SessionClock.covering(built.startNanos(), built.endNanos(), RATE);
        SailedCourse.Start start = follow(SailedWind.of(built, clock, null, WindOptions.DEFAULT), null)
                .start();
        assertNotNull(start);
        assertEquals(10, start.crossed(), 0.05);
    }
}
