package trimwright.course;

import java.util.ArrayList;
import java.util.List;

/** A course laid out in its plane: which line ends each leg, how far the boundary is. */
public final class CourseGeometry {
    /** A mark's leg ends on a line from it outward of this length (m): chosen, longer than any sane wide rounding. */
    private static final double OUTWARD = 400;

    private final LocalPlane plane;
    private final PlaneLine start;
    private final List<PlaneLine> ends = new ArrayList<>();
    private final List<CourseLeg> legs = new ArrayList<>();
    private final List<Boolean> isMark = new ArrayList<>();
    private final List<Boolean> markAtPort = new ArrayList<>();
    private final List<PlanePoint> boundary;

    public CourseGeometry(Course course) {
        plane = course.plane();
        start = toPlane(course.start());
        PlaneLine finish = toPlane(course.finish());
        boundary = course.boundary().stream().map(plane::toPlane).toList();
        List<Waypoint> order = course.order();
        for (int i = 0; i < order.size(); i++) {
            PlanePoint from = i == 0 ? start.middle() : middleOf(order.get(i - 1));
            PlanePoint next = i + 1 < order.size() ? middleOf(order.get(i + 1)) : finish.middle();
            ends.add(endOf(order.get(i), from, next));
            isMark.add(order.get(i) instanceof Mark);
            markAtPort.add(order.get(i) instanceof Mark mark && mark.rounding() == Rounding.PORT);
        }
        ends.add(finish);
        String name = "start";
        PlanePoint at = start.middle();
        for (int i = 0; i <= order.size(); i++) {
            String next = i < order.size() ? order.get(i).id() : "finish";
            PlanePoint end = i < order.size() ? middleOf(order.get(i)) : finish.middle();
            legs.add(new CourseLeg(i + 1, name, next, at, end));
            name = next;
            at = end;
        }
    }

    public LocalPlane plane() {
        return plane;
    }

    public PlaneLine start() {
        return start;
    }

    public int legCount() {
        return ends.size();
    }

    /** The leg of that index, from 0. */
    public CourseLeg leg(int leg) {
        return legs.get(leg);
    }

    /** The line whose crossing ends the leg: between a gate's marks, outward from a mark, or the finish. */
    public PlaneLine endOfLeg(int leg) {
        return ends.get(leg);
    }

    /** Whether the leg ends at a single mark that is left to port, so that its line begins there with the port end. */
    public boolean isMarkLeftToPort(int leg) {
        return leg < markAtPort.size() && markAtPort.get(leg);
    }

    /** Whether the leg ends at a single mark. */
    public boolean endsAtMark(int leg) {
        return leg < isMark.size() && isMark.get(leg);
    }

    /** Corners of the boundary, empty where there is none. */
    public List<PlanePoint> boundary() {
        return boundary;
    }

    /** Whether the point is inside the boundary; true where there is none. */
    public boolean isInside(PlanePoint point) {
        if (boundary.isEmpty()) {
            return true;
        }
        boolean inside = false;
        for (int i = 0, j = boundary.size() - 1; i < boundary.size(); j = i++) {
            PlanePoint a = boundary.get(i);
            PlanePoint b = boundary.get(j);
            if ((a.east() > point.east()) != (b.east() > point.east())
                    && point.north()
                            < a.north() + (b.north() - a.north()) * (point.east() - a.east()) / (b.east() - a.east())) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Way from the point to the boundary in a direction (m); infinite where it is not met. */
    public double distanceToBoundary(PlanePoint from, double bearing) {
        double n = StrictMath.cos(bearing);
        double e = StrictMath.sin(bearing);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0, j = boundary.size() - 1; i < boundary.size(); j = i++) {
            PlanePoint a = boundary.get(j);
            double sn = boundary.get(i).north() - a.north();
            double se = boundary.get(i).east() - a.east();
            double det = n * se - e * sn;
            if (det == 0) {
                continue;
            }
            double dn = a.north() - from.north();
            double de = a.east() - from.east();
            double way = (dn * se - de * sn) / det;
            double share = (dn * e - de * n) / det;
            if (way >= 0 && share >= 0 && share <= 1) {
                least = Math.min(least, way);
            }
        }
        return least;
    }

    private PlaneLine toPlane(Line line) {
        return new PlaneLine(plane.toPlane(line.portEnd()), plane.toPlane(line.starboardEnd()));
    }

    private PlanePoint middleOf(Waypoint waypoint) {
        if (waypoint instanceof Gate gate) {
            return new PlaneLine(plane.toPlane(gate.portMark()), plane.toPlane(gate.starboardMark())).middle();
        }
        if (waypoint instanceof Mark mark) {
            return plane.toPlane(mark.position());
        }
        throw new AssertionError(waypoint);
    }

    private PlaneLine endOf(Waypoint waypoint, PlanePoint from, PlanePoint next) {
        if (waypoint instanceof Gate gate) {
            return new PlaneLine(plane.toPlane(gate.portMark()), plane.toPlane(gate.starboardMark()));
        }
        if (waypoint instanceof Mark mark) {
            return outward(plane.toPlane(mark.position()), mark.rounding(), from, next);
        }
        throw new AssertionError(waypoint);
    }

    /** From the mark away from both neighbours, unless the side on which it is left asks for the other way. */
    private static PlaneLine outward(PlanePoint mark, Rounding rounding, PlanePoint from, PlanePoint next) {
        double toNext = from.bearingTo(next);
        double right = rounding == Rounding.PORT ? 1 : -1;
        double sideNorth = -StrictMath.sin(toNext) * right;
        double sideEast = StrictMath.cos(toNext) * right;
        double a = from.bearingTo(mark);
        double b = next.bearingTo(mark);
        double north = StrictMath.cos(a) + StrictMath.cos(b);
        double east = StrictMath.sin(a) + StrictMath.sin(b);
        double length = StrictMath.hypot(north, east);
        if (length < 0.1 || north * sideNorth + east * sideEast <= 0) {
            north = sideNorth;
            east = sideEast;
            length = 1;
        }
        PlanePoint far = mark.plus(OUTWARD * north / length, OUTWARD * east / length);
        return rounding == Rounding.PORT ? new PlaneLine(mark, far) : new PlaneLine(far, mark);
    }
}
