package trimwright.course;

/**
 * One leg of a course, laid in its plane.
 *
 * @param number from 1
 * @param from name of what it begins at; {@code start} for the line
 * @param to name of what it ends at; {@code finish} for the line
 * @param start middle of the line or gate, or the mark, that it begins at
 * @param end the same where it ends
 */
public record CourseLeg(int number, String from, String to, PlanePoint start, PlanePoint end) {
    /** Direction from start to end (rad), in (-pi, pi]. */
    public double bearing() {
        return start.bearingTo(end);
    }

    /** From start to end (m). */
    public double length() {
        return start.distanceTo(end);
    }

    /** Way made good towards the end at that place (m): 0 at the start, the length at the end. */
    public double along(PlanePoint place) {
        double bearing = bearing();
        return (place.north() - start.north()) * StrictMath.cos(bearing)
                + (place.east() - start.east()) * StrictMath.sin(bearing);
    }
}
