package trimwright.platform;

import trimwright.hull.HullChange;
import trimwright.hull.HullLoad;

/** A hull's buoyancy, straight up, and its drag, against the course, as one force in body axes; and its first-order change. */
final class HullForce {
    /** Keeps the direction of the drag finite at rest (m/s), chosen. */
    private static final double STILL = 1e-9;

    private HullForce() {}

    /** @param y of the hull, to starboard (m) */
    static void add(HullLoad hull, double y, SailingState state, Pose pose, ForceSum sum) {
        double up = hull.buoyancy();
        double speed = Math.max(state.get(Variable.BOAT_SPEED), STILL);
        double ahead = -hull.drag() * pose.ahead() / speed;
        double abeam = -hull.drag() * pose.abeam() / speed;
        sum.add(-up * pose.downX(), -up * pose.downY(), -up * pose.downZ(), hull.buoyancyX(), y, hull.dragZ());
        sum.add(
                pose.bodyX(ahead),
                pose.bodyY(ahead, abeam),
                pose.bodyZ(ahead, abeam),
                hull.buoyancyX(),
                y,
                hull.dragZ());
    }

    static void addChange(
            HullLoad hull,
            HullChange by,
            double y,
            SailingState state,
            Pose pose,
            PoseChange change,
            double bySpeed,
            ForceSum sum) {
        double up = hull.buoyancy();
        double speed = Math.max(state.get(Variable.BOAT_SPEED), STILL);
        double ahead = -hull.drag() * pose.ahead() / speed;
        double abeam = -hull.drag() * pose.abeam() / speed;
        double byAhead = -(by.drag() * pose.ahead() + hull.drag() * change.ahead() + ahead * bySpeed) / speed;
        double byAbeam = -(by.drag() * pose.abeam() + hull.drag() * change.abeam() + abeam * bySpeed) / speed;
        sum.add(
                change.bodyX(ahead, byAhead) - up * change.downX() - by.buoyancy() * pose.downX(),
                change.bodyY(ahead, abeam, byAhead, byAbeam) - up * change.downY() - by.buoyancy() * pose.downY(),
                change.bodyZ(ahead, abeam, byAhead, byAbeam) - up * change.downZ() - by.buoyancy() * pose.downZ(),
                hull.buoyancyX(),
                y,
                hull.dragZ());
        sum.addMoved(
                pose.bodyX(ahead) - up * pose.downX(),
                pose.bodyY(ahead, abeam) - up * pose.downY(),
                pose.bodyZ(ahead, abeam) - up * pose.downZ(),
                by.buoyancyX(),
                0,
                by.dragZ());
    }
}
