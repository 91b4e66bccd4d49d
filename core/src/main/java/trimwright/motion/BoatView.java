package trimwright.motion;

/** A boat in one state, as seen from outside: places, velocities and the wind felt at points given in body axes. */
public final class BoatView {
    private final MotionState state;
    private final Kinematics motion;
    private final double cx;
    private final double cy;
    private final double cz;
    private final double cos;
    private final double sin;

    BoatView(MotionState state, Kinematics motion, double cx, double cy, double cz) {
        this.state = state;
        this.motion = motion;
        this.cx = cx;
        this.cy = cy;
        this.cz = cz;
        cos = StrictMath.cos(state.pose().heading());
        sin = StrictMath.sin(state.pose().heading());
    }

    /** Bottom of the hulls, on the centreline at the main foils, above the water (m). */
    public double rideHeight() {
        return motion.originHeight();
    }

    /** North of a point (m). */
    public double north(double x, double y, double z) {
        return state.pose().north() + ahead(x, y, z) * cos - abeam(y, z) * sin;
    }

    /** East of a point (m). */
    public double east(double x, double y, double z) {
        return state.pose().east() + ahead(x, y, z) * sin + abeam(y, z) * cos;
    }

    /** Velocity of a point to the north (m/s). */
    public double velocityNorth(double x, double y, double z) {
        return levelAhead(x, y, z) * cos - levelAbeam(x, y, z) * sin;
    }

    /** Velocity of a point to the east (m/s). */
    public double velocityEast(double x, double y, double z) {
        return levelAhead(x, y, z) * sin + levelAbeam(x, y, z) * cos;
    }

    /** Part of the wind felt at a point that comes from ahead, body axes (m/s). */
    public double windFromAhead(LocalWind wind, double x, double y, double z) {
        double height = motion.heightInWind(x, y, z);
        return motion.velocityX(y, z) - motion.bodyX(wind.ahead(height, cos, sin), 0);
    }

    /** Part of the wind felt at a point that comes from starboard, body axes (m/s). */
    public double windFromStarboard(LocalWind wind, double x, double y, double z) {
        double height = motion.heightInWind(x, y, z);
        return motion.velocityY(x, z) - motion.bodyY(wind.ahead(height, cos, sin), wind.abeam(height, cos, sin), 0);
    }

    private double ahead(double x, double y, double z) {
        return motion.levelX(x - cx, y - cy, z - cz);
    }

    private double abeam(double y, double z) {
        return motion.levelY(y - cy, z - cz);
    }

    private double levelAhead(double x, double y, double z) {
        return motion.levelX(motion.velocityX(y, z), motion.velocityY(x, z), motion.velocityZ(x, y));
    }

    private double levelAbeam(double x, double y, double z) {
        return motion.levelY(motion.velocityY(x, z), motion.velocityZ(x, y));
    }
}
