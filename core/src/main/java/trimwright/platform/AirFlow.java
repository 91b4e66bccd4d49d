package trimwright.platform;

/** Velocity of the air past the boat in level axes, for a wind speed at some height. */
final class AirFlow {
    final double cos;
    final double sin;
    private final double ahead;
    private final double abeam;

    AirFlow(SailingState state, Pose pose, Conditions conditions) {
        double fromBow = conditions.windward().sign() * state.trueWindAngleToBow();
        cos = StrictMath.cos(fromBow);
        sin = StrictMath.sin(fromBow);
        ahead = pose.ahead();
        abeam = pose.abeam();
    }

    /** Along the heading (m/s): negative when it comes from ahead. */
    double levelX(double wind) {
        return -wind * cos - ahead;
    }

    /** To starboard (m/s): negative when it comes from starboard. */
    double levelY(double wind) {
        return -wind * sin - abeam;
    }
}
