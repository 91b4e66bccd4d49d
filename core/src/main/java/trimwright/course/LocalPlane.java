package trimwright.course;

/**
 * Plane coordinates round an origin on the WGS 84 ellipsoid: a series to second order of the radii of curvature at the
 * origin. Within 5 km of the origin and 60 degrees of the equator distances agree with the geodesic to 1e-5; not for use
 * beyond 20 km.
 */
public final class LocalPlane {
    /** Semi-major axis of WGS 84 (m), by definition. */
    private static final double A = 6378137.0;
    /** Flattening of WGS 84 (-), by definition. */
    private static final double F = 1 / 298.257223563;

    private final Position origin;
    private final double meridian;
    private final double normal;
    private final double sine;
    private final double cosine;

    public LocalPlane(Position origin) {
        this.origin = origin;
        double e2 = F * (2 - F);
        sine = StrictMath.sin(origin.latitude());
        cosine = StrictMath.cos(origin.latitude());
        double w2 = 1 - e2 * sine * sine;
        meridian = A * (1 - e2) / (w2 * StrictMath.sqrt(w2));
        normal = A / StrictMath.sqrt(w2);
    }

    public Position origin() {
        return origin;
    }

    public PlanePoint toPlane(Position position) {
        double dLatitude = position.latitude() - origin.latitude();
        double dLongitude = StrictMath.IEEEremainder(position.longitude() - origin.longitude(), 2 * Math.PI);
        double north = meridian * dLatitude + 0.5 * normal * sine * cosine * dLongitude * dLongitude;
        double east = (normal * cosine - meridian * sine * dLatitude) * dLongitude;
        return new PlanePoint(north, east);
    }

    public Position toEarth(PlanePoint point) {
        double dLatitude = point.north() / meridian;
        double dLongitude = point.east() / (normal * cosine);
        // Fixed-point inversion of the series above; it gains six digits a round at course size.
        for (int i = 0; i < 4; i++) {
            dLatitude = (point.north() - 0.5 * normal * sine * cosine * dLongitude * dLongitude) / meridian;
            dLongitude = point.east() / (normal * cosine - meridian * sine * dLatitude);
        }
        return new Position(origin.latitude() + dLatitude, origin.longitude() + dLongitude);
    }
}
