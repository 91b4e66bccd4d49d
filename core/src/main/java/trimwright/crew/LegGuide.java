package trimwright.crew;

import trimwright.course.CourseGeometry;
import trimwright.course.PlaneLine;
import trimwright.course.PlanePoint;

/** Which leg a boat is on and which point it makes for. */
final class LegGuide {
    /** How far outside a mark the bow is steered (m): chosen. */
    private static final double CLEAR_OF_MARK = 25;

    private final CourseGeometry course;
    private final Temper temper;
    private int leg = -1;
    private PlanePoint before = new PlanePoint(Double.NaN, Double.NaN);
    private double beforeTime = Double.NaN;

    LegGuide(CourseGeometry course, Temper temper) {
        this.course = course;
        this.temper = temper;
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
        if (leg < 0) {
            return along(course.start(), temper.startShare());
        }
        PlaneLine end = course.endOfLeg(Math.min(leg, course.legCount() - 1));
        if (!course.endsAtMark(leg)) {
            return along(end, temper.gateShare());
        }
        double near = CLEAR_OF_MARK / end.length();
        return along(end, course.isMarkLeftToPort(leg) ? near : 1 - near);
    }

    /** Takes the bow's new place; time of the passage if it ended a leg or crossed the start after the gun, else NaN. */
    double passes(PlanePoint bow, double time, double gun) {
        double passed = Double.NaN;
        if (!Double.isNaN(beforeTime) && !hasFinished()) {
            PlaneLine line = leg < 0 ? course.start() : course.endOfLeg(leg);
            double share = line.crossedAt(before, bow);
            double at = beforeTime + share * (time - beforeTime);
            if (!Double.isNaN(share) && (leg >= 0 || at >= gun)) {
                leg++;
                passed = at;
            }
        }
        before = bow;
        beforeTime = time;
        return passed;
    }

    private static PlanePoint along(PlaneLine line, double share) {
        return new PlanePoint(
                line.portEnd().north()
                        + share * (line.starboardEnd().north() - line.portEnd().north()),
                line.portEnd().east()
                        + share * (line.starboardEnd().east() - line.portEnd().east()));
    }
}
