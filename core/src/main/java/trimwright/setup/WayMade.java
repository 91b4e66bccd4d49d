package trimwright.setup;

import org.jspecify.annotations.Nullable;
import trimwright.target.Branch;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.units.Angles;

/**
 * How fast a boat at her targets gets along a leg in a wind and a current. A course closer to the wind than the best beat is
 * tacked, one further down than the best run is gybed; the angle to the wind and its speed are those over the moving water. One
 * branch: foiling or on the hulls.
 */
final class WayMade {
    /** How a leg is sailed. */
    enum Way {
        TACKED,
        STRAIGHT,
        GYBED
    }

    /** Halvings of the speed over ground: to under 1e-7 m/s. */
    private static final int HALVINGS = 30;

    /** More than any boat makes over ground (m/s); chosen. */
    private static final double FASTEST = 60;

    private final TargetBook book;
    private final Branch branch;

    WayMade(TargetBook book, Branch branch) {
        this.book = book;
        this.branch = branch;
    }

    /**
     * Speed along a bearing over ground, the boat staying on the leg's line in the mean (m/s).
     *
     * @param bearing of the leg (rad)
     * @param windSpeed over ground at 10 m (m/s)
     * @param windFrom direction it comes from (rad)
     * @param currentTo direction the water moves to (rad)
     * @param current its speed (m/s)
     * @return NaN where the book has no answer or the boat does not make way against the water
     */
    double along(double bearing, double windSpeed, double windFrom, double currentTo, double current) {
        if (current == 0) {
            return 1 / share(bearing, 1, windSpeed, windFrom);
        }
        double currentNorth = current * StrictMath.cos(currentTo);
        double currentEast = current * StrictMath.sin(currentTo);
        // The wind over the water: what moves with the water feels its own way against the wind.
        double north = windSpeed * StrictMath.cos(windFrom) + currentNorth;
        double east = windSpeed * StrictMath.sin(windFrom) + currentEast;
        double wind = StrictMath.hypot(north, east);
        double from = StrictMath.atan2(east, north);
        double low = 0;
        double high = FASTEST;
        for (int i = 0; i < HALVINGS; i++) {
            double speed = 0.5 * (low + high);
            double throughNorth = speed * StrictMath.cos(bearing) - currentNorth;
            double throughEast = speed * StrictMath.sin(bearing) - currentEast;
            double share = share(
                    StrictMath.atan2(throughEast, throughNorth),
                    StrictMath.hypot(throughNorth, throughEast),
                    wind,
                    from);
            if (Double.isNaN(share)) {
                return Double.NaN;
            }
            if (share < 1) {
                low = speed;
            } else {
                high = speed;
            }
        }
        return low > 0 ? low : Double.NaN;
    }

    /** How a boat goes to a point straight on that bearing, or null where the book does not say. */
    @Nullable
    Way way(double bearing, double windSpeed, double windFrom) {
        double angle = Math.abs(Angles.difference(bearing, windFrom));
        TargetPoint up = book.findBest(branch, TargetMode.UPWIND, windSpeed).point();
        TargetPoint down = book.findBest(branch, TargetMode.DOWNWIND, windSpeed).point();
        if (up != null && angle < up.trueWindAngle()) {
            return Way.TACKED;
        }
        if (down != null && angle > down.trueWindAngle()) {
            return Way.GYBED;
        }
        return book.find(branch, windSpeed, angle).target() == null ? null : Way.STRAIGHT;
    }

    /** Speed through the water on that course over the fastest made good on it (-), tacking or gybing where that is faster. */
    private double share(double course, double speed, double wind, double from) {
        double angle = Math.abs(Angles.difference(course, from));
        TargetPoint up = book.findBest(branch, TargetMode.UPWIND, wind).point();
        if (up != null && angle < up.trueWindAngle()) {
            return speed * StrictMath.cos(angle) / up.getTarget().velocityMadeGood();
        }
        TargetPoint down = book.findBest(branch, TargetMode.DOWNWIND, wind).point();
        if (down != null && angle > down.trueWindAngle()) {
            return -speed * StrictMath.cos(angle) / down.getTarget().velocityMadeGood();
        }
        Target straight = book.find(branch, wind, angle).target();
        return straight == null ? Double.NaN : speed / straight.boatSpeed();
    }
}
