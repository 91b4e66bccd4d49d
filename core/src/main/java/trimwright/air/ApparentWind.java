package trimwright.air;

/**
 * Wind felt on the moving boat, in level axes.
 *
 * @param speed AWS (m/s), not negative
 * @param angle AWA (rad), from the bow to where the wind comes from, (-pi, pi], positive from starboard
 */
public record ApparentWind(double speed, double angle) {
    /** From the components of where it comes from: ahead and starboard (m/s). */
    public static ApparentWind fromComponents(double ahead, double starboard) {
        return new ApparentWind(StrictMath.hypot(ahead, starboard), angleOf(ahead, starboard));
    }

    /** The wind over the water, given the boat's velocity through it: ahead and to starboard (m/s), level axes. */
    public TrueWind trueWind(double ahead, double starboard) {
        double x = speed * StrictMath.cos(angle) - ahead;
        double y = speed * StrictMath.sin(angle) - starboard;
        return new TrueWind(StrictMath.hypot(x, y), angleOf(x, y));
    }

    /** The wind over the water for a boat without leeway at a speed (m/s). */
    public TrueWind trueWind(double boatSpeed) {
        return trueWind(boatSpeed, 0);
    }

    // atan2 gives -pi for a negative zero; the range is (-pi, pi].
    private static double angleOf(double x, double y) {
        double angle = StrictMath.atan2(y, x);
        return angle <= -Math.PI ? Math.PI : angle;
    }
}
