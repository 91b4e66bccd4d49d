package trimwright.sim;

import java.util.ArrayList;
import java.util.List;
import trimwright.course.Course;
import trimwright.course.Gate;
import trimwright.course.Line;
import trimwright.course.LocalPlane;
import trimwright.course.Mark;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.course.Rounding;
import trimwright.course.Waypoint;

/**
 * The course of Saltmere Week, laid to the day's mean wind: a reaching start, one reaching mark, laps between two gates,
 * a finish off the leeward gate. Saltmere Bay is invented; its place is open ocean.
 */
public final class DemoCourse {
    /** Open ocean, far from any coast. */
    private static final Position CENTRE = new Position(Math.toRadians(31.2), Math.toRadians(-41.5));

    private static final double LENGTH = 1250;
    private static final double HALF_WIDTH = 560;
    private static final double GATE = 140;

    private DemoCourse() {}

    /**
     * @param windFrom mean wind, clockwise from north (rad)
     * @param gunNanos start signal (ns since 1970, UTC)
     * @param laps each down the wind and up again, at least 1
     */
    public static Course of(double windFrom, long gunNanos, int laps) {
        LocalPlane plane = new LocalPlane(CENTRE);
        Layout at = (up, right) -> plane.toEarth(new PlanePoint(
                up * StrictMath.cos(windFrom) - right * StrictMath.sin(windFrom),
                up * StrictMath.sin(windFrom) + right * StrictMath.cos(windFrom)));
        Gate leeward = new Gate("leeward", at.place(0, GATE / 2), at.place(0, -GATE / 2));
        Gate windward = new Gate("windward", at.place(LENGTH, -GATE / 2), at.place(LENGTH, GATE / 2));
        // Sailed to the left of the wind's eye, on starboard tack: the port end lies to leeward.
        Line start = new Line(at.place(700, 120), at.place(940, 120));
        Mark reach = new Mark("reach", at.place(780, -450), Rounding.PORT);
        List<Waypoint> order = new ArrayList<>(List.of(reach));
        for (int lap = 0; lap < laps; lap++) {
            order.add(leeward);
            order.add(windward);
        }
        return new Course(
                "Saltmere Week, race 1",
                gunNanos,
                start,
                order,
                new Line(at.place(60, 100), at.place(60, -100)),
                List.of(
                        at.place(-380, -HALF_WIDTH),
                        at.place(-380, HALF_WIDTH + 240),
                        at.place(LENGTH + 380, HALF_WIDTH + 240),
                        at.place(LENGTH + 380, -HALF_WIDTH)));
    }

    private interface Layout {
        Position place(double up, double right);
    }
}
