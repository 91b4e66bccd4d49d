package trimwright.boat;

import java.util.List;

/**
 * What the crew reads off one control over the angle that it stands for: straight between the points that were marked, strictly rising
 * or falling, so that each reading is one angle. Beyond its ends nothing is marked and nothing is read.
 *
 * @param points by rising angle, at least two
 */
public record MarkScale(List<Point> points) {
    /**
     * One mark.
     *
     * @param angle of the control, free of the tack (rad)
     * @param reading in the unit of the marks, may be negative
     */
    public record Point(double angle, double reading) {}

    public MarkScale {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a scale of marks needs two points or more");
        }
        double way = points.get(1).reading() - points.get(0).reading();
        for (int i = 1; i < points.size(); i++) {
            double step = points.get(i).reading() - points.get(i - 1).reading();
            if (!(points.get(i).angle() > points.get(i - 1).angle()) || !(step * way > 0)) {
                throw new IllegalArgumentException("marks rise in angle and go one way in reading, not " + points);
            }
        }
    }

    /** The reading at that angle (rad); NaN beyond the marks. */
    public double reading(double angle) {
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            if (angle >= a.angle() && angle <= b.angle()) {
                double share = (angle - a.angle()) / (b.angle() - a.angle());
                return a.reading() + share * (b.reading() - a.reading());
            }
        }
        return Double.NaN;
    }

    /** The angle at that reading (rad); NaN beyond the marks. */
    public double angle(double reading) {
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            if ((reading - a.reading()) * (reading - b.reading()) <= 0) {
                double share = (reading - a.reading()) / (b.reading() - a.reading());
                return a.angle() + share * (b.angle() - a.angle());
            }
        }
        return Double.NaN;
    }
}
