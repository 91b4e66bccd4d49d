package trimwright.platform;

import trimwright.boat.Side;

/**
 * How the body axes lie and move: roll, pitch, height above the water and velocity. Rotation by heading, pitch, roll
 * (3-2-1); the level axes have the heading's direction.
 */
public final class Pose {
    final double sinRoll;
    final double cosRoll;
    final double sinPitch;
    final double cosPitch;
    private final double rideHeight;
    private final double ahead;
    private final double abeam;

    private Pose(double roll, double pitch, double rideHeight, double ahead, double abeam) {
        sinRoll = StrictMath.sin(roll);
        cosRoll = StrictMath.cos(roll);
        sinPitch = StrictMath.sin(pitch);
        cosPitch = StrictMath.cos(pitch);
        this.rideHeight = rideHeight;
        this.ahead = ahead;
        this.abeam = abeam;
    }

    /** Pose of a state with the wind from one side: windward heel rolls that side down, leeway drifts from it. */
    public static Pose of(SailingState state, Side windward) {
        double speed = state.get(Variable.BOAT_SPEED);
        double leeway = state.get(Variable.LEEWAY);
        return new Pose(
                windward.sign() * state.get(Variable.HEEL),
                state.get(Variable.PITCH),
                state.get(Variable.RIDE_HEIGHT),
                speed * StrictMath.cos(leeway),
                -windward.sign() * speed * StrictMath.sin(leeway));
    }

    /** Depth below the undisturbed water (m) of a point in body axes; negative above. */
    public double depth(double x, double y, double z) {
        return -x * sinPitch + (y * sinRoll + z * cosRoll) * cosPitch - rideHeight;
    }

    /** Velocity of the boat through the water along level axes, ahead (m/s). */
    public double ahead() {
        return ahead;
    }

    /** Velocity of the boat through the water along level axes, to starboard (m/s). */
    public double abeam() {
        return abeam;
    }

    /** A horizontal vector in level axes, in body axes: component x. */
    public double bodyX(double levelX) {
        return levelX * cosPitch;
    }

    /** A horizontal vector in level axes, in body axes: component y. */
    public double bodyY(double levelX, double levelY) {
        return levelX * sinPitch * sinRoll + levelY * cosRoll;
    }

    /** A horizontal vector in level axes, in body axes: component z. */
    public double bodyZ(double levelX, double levelY) {
        return levelX * sinPitch * cosRoll - levelY * sinRoll;
    }

    /** Body components of the vector (0, 0, 1), straight down: x. */
    public double downX() {
        return -sinPitch;
    }

    /** Straight down in body axes: y. */
    public double downY() {
        return cosPitch * sinRoll;
    }

    /** Straight down in body axes: z. */
    public double downZ() {
        return cosPitch * cosRoll;
    }

    /** A vector in body axes, along level x. */
    public double levelX(double x, double y, double z) {
        return x * cosPitch + (y * sinRoll + z * cosRoll) * sinPitch;
    }

    /** A vector in body axes, along level y. */
    public double levelY(double y, double z) {
        return y * cosRoll - z * sinRoll;
    }
}
