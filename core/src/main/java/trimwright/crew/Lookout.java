package trimwright.crew;

import java.util.List;
import trimwright.course.PlanePoint;
import trimwright.units.Angles;

/**
 * Keeps clear of others where the rule of the road asks it: port tack of starboard tack; on the same tack the one to
 * windward, and the one astern. A small change of heading toward the side that opens the distance; distances are chosen.
 */
final class Lookout {
    private static final double AHEAD = 9;
    private static final double NEAR = 32;
    private static final double DODGE = Math.toRadians(11);

    private double dodge;

    /** Change of heading (rad) to hold now. */
    double dodge(PlanePoint bow, double course, double speed, int tack, double windFrom, List<OtherBoat> others) {
        double worst = NEAR;
        double wanted = 0;
        for (OtherBoat other : others) {
            if (!mustGiveWay(bow, course, tack, windFrom, other)) {
                continue;
            }
            double straight = nearest(bow, course, speed, other);
            if (straight < worst) {
                worst = straight;
                double right = nearest(bow, course + DODGE, speed, other);
                double left = nearest(bow, course - DODGE, speed, other);
                wanted = right > left ? DODGE : -DODGE;
            }
        }
        dodge = wanted;
        return dodge;
    }

    private static boolean mustGiveWay(PlanePoint bow, double course, int tack, double windFrom, OtherBoat other) {
        double bearing = bow.bearingTo(other.place());
        if (tack != other.tack()) {
            return tack < 0;
        }
        boolean sheIsAhead = Math.abs(Angles.signed(bearing - course)) < Math.toRadians(60);
        boolean weAreToWindward = Math.abs(Angles.signed(bearing - windFrom)) > Math.toRadians(90);
        return sheIsAhead || weAreToWindward;
    }

    /** Least distance within the time that is looked ahead (m), other boat holding her course. */
    private static double nearest(PlanePoint bow, double course, double speed, OtherBoat other) {
        double dn = other.place().north() - bow.north();
        double de = other.place().east() - bow.east();
        double vn = other.speed() * StrictMath.cos(other.course()) - speed * StrictMath.cos(course);
        double ve = other.speed() * StrictMath.sin(other.course()) - speed * StrictMath.sin(course);
        double closing = vn * vn + ve * ve;
        double time = closing < 1e-6 ? 0 : Math.max(0, Math.min(AHEAD, -(dn * vn + de * ve) / closing));
        return StrictMath.hypot(dn + vn * time, de + ve * time);
    }
}
