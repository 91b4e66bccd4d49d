package trimwright.motion;

import trimwright.foil.Flow;
import trimwright.water.WaterMotion;
import trimwright.water.WaterPoint;

/** Water that moves, at points of a boat: places and velocities turned between earth and body axes. */
final class WaterFelt {
    private final WaterMotion water;
    private final Pose pose;
    private final double cos;
    private final double sin;
    private final double cx;
    private final double cy;
    private final double cz;

    /** With the centre of mass there in body axes (m). */
    WaterFelt(WaterMotion water, Pose pose, double cx, double cy, double cz) {
        this.water = water;
        this.pose = pose;
        this.cx = cx;
        this.cy = cy;
        this.cz = cz;
        cos = StrictMath.cos(pose.heading());
        sin = StrictMath.sin(pose.heading());
    }

    /** Height of the surface over the undisturbed one above or below a point (m). */
    double elevation(Kinematics motion, double x, double y, double z) {
        double ahead = motion.levelX(x - cx, y - cy, z - cz);
        double abeam = motion.levelY(y - cy, z - cz);
        return water.elevation(north(ahead, abeam), east(ahead, abeam));
    }

    /** Flow past a point: that of still water, and the water's own motion. */
    Flow past(Kinematics motion, double x, double y, double z) {
        double ahead = motion.levelX(x - cx, y - cy, z - cz);
        double abeam = motion.levelY(y - cy, z - cz);
        WaterPoint at = water.at(north(ahead, abeam), east(ahead, abeam), motion.depth(x, y, z));
        double forward = at.north() * cos + at.east() * sin;
        double starboard = at.east() * cos - at.north() * sin;
        return new Flow(
                motion.bodyX(forward, at.down()) - motion.velocityX(y, z),
                motion.bodyY(forward, starboard, at.down()) - motion.velocityY(x, z),
                motion.bodyZ(forward, starboard, at.down()) - motion.velocityZ(x, y),
                at.depth());
    }

    private double north(double ahead, double abeam) {
        return pose.north() + ahead * cos - abeam * sin;
    }

    private double east(double ahead, double abeam) {
        return pose.east() + ahead * sin + abeam * cos;
    }
}
