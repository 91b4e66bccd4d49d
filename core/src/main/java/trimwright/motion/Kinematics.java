package trimwright.motion;

import org.jspecify.annotations.Nullable;
import trimwright.foil.Flow;
import trimwright.water.WaterMotion;

/** Velocities and depths of points of the boat at one instant. */
final class Kinematics {
    /** Nearer to the vertical heading and roll are one: a boat that stands on her nose has long ended her run. */
    private static final double LEAST_COS_PITCH = 0.2;

    private final double sinRoll;
    private final double cosRoll;
    private final double sinPitch;
    private final double cosPitch;
    private final double pitch;
    private final double originHeight;
    private final double u;
    private final double v;
    private final double w;
    private final double p;
    private final double q;
    private final double r;
    private final @Nullable WaterFelt felt;

    /** In still water, with the centre of mass there in body axes (m). */
    Kinematics(Pose pose, Rates rates, double cx, double cy, double cz) {
        this(pose, rates, WaterMotion.STILL, cx, cy, cz);
    }

    /**
     * @param cx centre of mass, body axes (m)
     * @param cy the same to starboard (m)
     * @param cz the same down (m)
     */
    Kinematics(Pose pose, Rates rates, WaterMotion water, double cx, double cy, double cz) {
        felt = water == WaterMotion.STILL ? null : new WaterFelt(water, pose, cx, cy, cz);
        pitch = pose.pitch();
        sinRoll = StrictMath.sin(pose.roll());
        cosRoll = StrictMath.cos(pose.roll());
        sinPitch = StrictMath.sin(pose.pitch());
        cosPitch = StrictMath.cos(pose.pitch());
        originHeight = pose.height() + down(cx, cy, cz);
        p = rates.roll() - rates.yaw() * sinPitch;
        q = rates.pitch() * cosRoll + rates.yaw() * cosPitch * sinRoll;
        r = rates.yaw() * cosPitch * cosRoll - rates.pitch() * sinRoll;
        double surge = rates.surge();
        double sway = rates.sway();
        double sink = -rates.climb();
        u = bodyX(surge, sink) - (q * cz - r * cy);
        v = bodyY(surge, sway, sink) - (r * cx - p * cz);
        w = bodyZ(surge, sway, sink) - (p * cy - q * cx);
    }

    /** Bottom of the hulls, on the centreline at the main foils, above the water (m). */
    double originHeight() {
        return originHeight;
    }

    /** Rates of turning about the body's axes (rad/s). */
    Spin spin() {
        return new Spin(p, q, r);
    }

    /** How fast roll, pitch and heading change at such rates about the body's axes (rad/s), in this order. */
    Spin turning(Spin spin) {
        double aside = spin.q() * sinRoll + spin.r() * cosRoll;
        double yaw = aside / Math.max(LEAST_COS_PITCH, cosPitch);
        return new Spin(spin.p() + sinPitch * yaw, spin.q() * cosRoll - spin.r() * sinRoll, yaw);
    }

    /** Bow up (rad). */
    double pitch() {
        return pitch;
    }

    /** How far a point is below the origin, along the vertical (m). */
    double down(double x, double y, double z) {
        return -sinPitch * x + cosPitch * (sinRoll * y + cosRoll * z);
    }

    /** Depth of a point below the undisturbed water (m). */
    double depth(double x, double y, double z) {
        return down(x, y, z) - originHeight;
    }

    /** Height of a point above the undisturbed water (m), where wind is asked for: never below a tenth of a metre. */
    double heightInWind(double x, double y, double z) {
        return Math.max(0.1, -depth(x, y, z));
    }

    /** Depth of a point below the surface as it stands there (m). */
    double wet(double x, double y, double z) {
        return felt == null ? depth(x, y, z) : depth(x, y, z) + felt.elevation(this, x, y, z);
    }

    /** Water past a point, with its depth below the surface as it stands there. */
    Flow water(double x, double y, double z) {
        if (felt != null) {
            return felt.past(this, x, y, z);
        }
        return new Flow(-velocityX(y, z), -velocityY(x, z), -velocityZ(x, y), depth(x, y, z));
    }

    /** Velocity of a point forward (m/s). */
    double velocityX(double y, double z) {
        return u + q * z - r * y;
    }

    double velocityY(double x, double z) {
        return v + r * x - p * z;
    }

    double velocityZ(double x, double y) {
        return w + p * y - q * x;
    }

    /** Level vector into body axes: forward part. */
    double bodyX(double forward, double down) {
        return cosPitch * forward - sinPitch * down;
    }

    double bodyY(double forward, double starboard, double down) {
        return cosRoll * starboard + sinRoll * (sinPitch * forward + cosPitch * down);
    }

    double bodyZ(double forward, double starboard, double down) {
        return -sinRoll * starboard + cosRoll * (sinPitch * forward + cosPitch * down);
    }

    /** Body vector into level axes: forward part. */
    double levelX(double x, double y, double z) {
        return cosPitch * x + sinPitch * (sinRoll * y + cosRoll * z);
    }

    double levelY(double y, double z) {
        return cosRoll * y - sinRoll * z;
    }

    double levelZ(double x, double y, double z) {
        return down(x, y, z);
    }
}
