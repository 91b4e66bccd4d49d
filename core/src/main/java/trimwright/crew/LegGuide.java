package trimwright.crew;

import trimwright.course.CourseGeometry;
import trimwright.course.PlaneLine;
import trimwright.course.PlanePoint;

/** Which leg a boat is on and which point it makes for. */
final class LegGuide {
    /** How far outside a mark the bow is steered (m): chosen. */
    private static final double CLEAR_OF_MARK = 40;

    private final CourseGeometry course;
    private final Temper temper;
    /** How far beyond the start line (m): chosen. */
    private static final double BEYOND = 150;
    /** Distance at which nothing is changed any more (m): chosen. */
    private static final double CLOSE = 45;

    /** How far past a line is past, and how far before it one goes back (m): chosen. */
    private static final double PAST = 8;

    private static final double BACK = 150;

    private int leg = -1;
    private boolean goesBack;
    private PlanePoint before = new PlanePoint(Double.NaN, Double.NaN);
    private double beforeTime = Double.NaN;

    LegGuide(CourseGeometry course, Temper temper) {
        this.course = course;
        this.temper = temper;
    }

    LegGuide copy() {
        LegGuide other = new LegGuide(course, temper);
        other.leg = leg;
        other.goesBack = goesBack;
        other.before = before;
        other.beforeTime = beforeTime;
        return other;
    }

    /** -1 before the start, then from 0; the number of legs when finished. */
    int leg() {
        return leg;
    }

    boolean hasFinished() {
        return leg >= course.legCount();
    }

    /** Point to make for. */
    PlanePoint target() {
        PlaneLine line = line();
        if (goesBack) {
            return across(line, leg >= 0 && course.endsAtMark(leg) ? outside(line) : along(line, 0.5), -BACK);
        }
        if (leg < 0) {
            // Beyond the line, so that she does not swing at the last moment.
            return across(line, along(line, temper.startShare()), BEYOND);
        }
        return course.endsAtMark(leg) ? outside(line) : along(line, temper.gateShare());
    }

    /** A little way from the mark that ends the leg, on the side on which it is passed. */
    private PlanePoint outside(PlaneLine line) {
        double near = CLEAR_OF_MARK / line.length();
        return along(line, course.isMarkLeftToPort(leg) ? near : 1 - near);
    }

    /** Distance left to the line that ends the leg, or to the start line, along the way to {@link #target} (m). */
    double left(PlanePoint bow) {
        return bow.distanceTo(target()) - (leg < 0 && !goesBack ? BEYOND : 0);
    }

    /** Whether the end of the leg is so near that the plan stands. */
    boolean isClose(PlanePoint bow) {
        return !goesBack && Math.abs(left(bow)) < CLOSE;
    }

    /** Takes the bow's new place; time of the passage if it ended a leg or crossed the start after the gun, else NaN. */
    double passes(PlanePoint bow, double time, double gun) {
        double passed = Double.NaN;
        if (!Double.isNaN(beforeTime) && !hasFinished()) {
            PlaneLine line = line();
            double share = line.crossedAt(before, bow);
            double at = beforeTime + share * (time - beforeTime);
            if (!Double.isNaN(share) && (leg >= 0 || at >= gun)) {
                leg++;
                passed = at;
            }
        }
        seeWhetherPast(bow);
        before = bow;
        beforeTime = time;
        return passed;
    }

    private PlaneLine line() {
        return leg < 0 ? course.start() : course.endOfLeg(Math.min(leg, course.legCount() - 1));
    }

    /** Who has gone past a line beside it, or past a mark on its wrong side, goes back before it. */
    private void seeWhetherPast(PlanePoint bow) {
        goesBack = !hasFinished() && line().ahead(bow) > (goesBack ? -BACK * 0.6 : PAST);
    }

    private static PlanePoint across(PlaneLine line, PlanePoint point, double way) {
        double bearing = line.portEnd().bearingTo(line.starboardEnd()) - Math.PI / 2;
        return point.plus(way * StrictMath.cos(bearing), way * StrictMath.sin(bearing));
    }

    private static PlanePoint along(PlaneLine line, double share) {
        return new PlanePoint(
                line.portEnd().north()
                        + share * (line.starboardEnd().north() - line.portEnd().north()),
                line.portEnd().east()
                        + share * (line.starboardEnd().east() - line.portEnd().east()));
    }
}
