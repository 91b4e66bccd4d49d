package trimwright.course;

/**
 * A stretch of line in the plane that is crossed with its port end to port.
 *
 * @param portEnd left end for a boat that crosses as she should
 * @param starboardEnd right end
 */
public record PlaneLine(PlanePoint portEnd, PlanePoint starboardEnd) {
    /** Where on the way from before (0) to after (1) the stretch is crossed in the right sense; NaN where it is not. */
    public double crossedAt(PlanePoint before, PlanePoint after) {
        double sideBefore = ahead(before);
        double sideAfter = ahead(after);
        if (!(sideBefore < 0 && sideAfter >= 0)) {
            return Double.NaN;
        }
        double share = sideBefore / (sideBefore - sideAfter);
        double north = before.north() + share * (after.north() - before.north());
        double east = before.east() + share * (after.east() - before.east());
        return isBeside(new PlanePoint(north, east)) ? share : Double.NaN;
    }

    /** Distance beyond the (endless) line, negative before it (m). */
    public double ahead(PlanePoint point) {
        return ((point.east() - portEnd.east()) * -lineNorth() + (point.north() - portEnd.north()) * lineEast())
                / length();
    }

    /** Whether the point lies straight before or behind the stretch, not beside an end. */
    public boolean isBeside(PlanePoint point) {
        double along = along(point);
        return along >= 0 && along <= length() * length();
    }

    private double along(PlanePoint point) {
        return (point.north() - portEnd.north()) * lineNorth() + (point.east() - portEnd.east()) * lineEast();
    }

    public double length() {
        return portEnd.distanceTo(starboardEnd);
    }

    public PlanePoint middle() {
        return new PlanePoint((portEnd.north() + starboardEnd.north()) / 2, (portEnd.east() + starboardEnd.east()) / 2);
    }

    private double lineNorth() {
        return starboardEnd.north() - portEnd.north();
    }

    private double lineEast() {
        return starboardEnd.east() - portEnd.east();
    }
}
