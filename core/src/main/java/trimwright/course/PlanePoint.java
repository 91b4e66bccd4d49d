package trimwright.course;

/**
 * A place in the plane of the course.
 *
 * @param north of the origin (m)
 * @param east of the origin (m)
 */
public record PlanePoint(double north, double east) {
    public PlanePoint plus(double north, double east) {
        return new PlanePoint(this.north + north, this.east + east);
    }

    public double distanceTo(PlanePoint other) {
        return StrictMath.hypot(other.north - north, other.east - east);
    }

    /** Direction to the other point, clockwise from north (rad), in (-pi, pi]. */
    public double bearingTo(PlanePoint other) {
        return StrictMath.atan2(other.east - east, other.north - north);
    }
}
