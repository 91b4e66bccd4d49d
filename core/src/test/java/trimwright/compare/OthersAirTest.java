package trimwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trimwright.course.LocalPlane;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.segment.BowTrack;
import trimwright.segment.OnCourse;
import trimwright.target.Attitude;
import trimwright.target.Band;
import trimwright.target.Branch;
import trimwright.target.Loads;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.target.TrimBands;
import trimwright.target.TrimSetting;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.SyntheticTrack;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/** Two boats on the same beat in a steady north wind of 8 m/s, 10 m/s fast, one sailing through what the other left. */
class OthersAirTest {
    private static final LocalPlane PLANE = new LocalPlane(new Position(Math.toRadians(31), Math.toRadians(-41)));
    private static final double DRIVE = 4000;
    private static final double SIDE = 12000;
    private static final double HEAD = 27;

    /** A boat that goes north-east, from a place. */
    private static WindTrack boat(double north, double east) {
        double part = 10 * Math.sqrt(0.5);
        BoatTrack track = new SyntheticTrack(100, 5)
                .heading(t -> 45)
                .with(Paths.LATITUDE, t -> at(north + part * t, east + part * t).latitude())
                .with(
                        Paths.LONGITUDE,
                        t -> at(north + part * t, east + part * t).longitude())
                .build();
        SessionClock clock = SessionClock.covering(track.startNanos(), track.endNanos(), 5);
        return SailedWind.of(track, clock, null, WindOptions.DEFAULT);
    }

    private static Position at(double north, double east) {
        return PLANE.toEarth(new PlanePoint(north, east));
    }

    private static TargetBook book() {
        Band none = new Band(0, 0);
        List<TargetPoint> points = new ArrayList<>();
        List<Double> winds = List.of(6.0, 10.0);
        List<Double> angles = List.of(Math.toRadians(30), Math.toRadians(60));
        for (double wind : winds) {
            for (double angle : angles) {
                Target target = new Target(
                        10,
                        7,
                        0.3,
                        16,
                        new TrimSetting(0, 0, 0.5, 0),
                        new TrimBands(none, none, none),
                        new Attitude(0, 1, 0, 0, 0, 0, 0, 0),
                        new Loads(0, 0, 0, 1, SIDE, DRIVE),
                        Set.of(),
                        Set.of());
                points.add(TargetPoint.solved(TargetMode.ANGLE, Branch.FOILING, wind, angle, target));
            }
        }
        return new TargetBook("test", "test", "test", new TargetGrid(winds, angles), points);
    }

    private static double clear(WindTrack own, WindTrack other) {
        OnCourse.Neighbour neighbour = new OnCourse.Neighbour(other, BowTrack.of(other, PLANE, null));
        double[] clear =
                new OthersAir(own, BowTrack.of(own, PLANE, null), List.of(neighbour), book(), HEAD).clearWind();
        return clear[400];
    }

    /** Where the other was five seconds ago, carried on by the wind, and so far aside on the trail's normal. */
    private static WindTrack behind(double aside) {
        double back = 50 * Math.sqrt(0.5);
        // The trail runs the way that the air goes past the boat: wind and course together.
        double north = -8 - 10 * Math.sqrt(0.5);
        double east = -10 * Math.sqrt(0.5);
        double length = Math.hypot(north, east);
        return boat(-back - 40 - aside * east / length, -back + aside * north / length);
    }

    private static double expected(double aside) {
        double felt = Math.sqrt(64 + 100 + 2 * 8 * 10 * Math.cos(Math.toRadians(45)));
        double width = 0.2 * 54 + 0.034 * felt * 5;
        // Dry air at 15 degrees and one atmosphere; wing and image on a whole disc.
        double push = 2 / (1.225 * felt * 2 * Math.PI * width * width) * Math.exp(-aside * aside / (2 * width * width));
        // Wind from port: to windward is north-west.
        double north = push * Math.sqrt(0.5) * (-DRIVE + SIDE);
        double east = push * Math.sqrt(0.5) * (-DRIVE - SIDE);
        return Math.hypot(-8 - north, -east) / 8;
    }

    @Test
    void onTheTrailTheLossIsThatOfTheFormula() {
        double found = clear(behind(0), boat(0, 0));
        assertEquals(expected(0) - 1, found - 1, 0.01 * (expected(0) - 1));
    }

    @Test
    void besideItTheBellFalls() {
        double found = clear(behind(20), boat(0, 0));
        assertEquals(expected(20) - 1, found - 1, 0.03 * (expected(20) - 1));
    }

    @Test
    void aheadOfTheOtherAndFarAwayNothingIsLost() {
        assertEquals(1, clear(boat(60, 60), boat(0, 0)), 1e-12);
        assertEquals(1, clear(boat(-600, 900), boat(0, 0)), 1e-6);
    }
}
