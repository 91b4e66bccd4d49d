package trimwright.air;

/**
 * Wind over the water, seen from the boat's bow.
 *
 * @param speed TWS (m/s), not negative
 * @param angle TWA (rad), from the bow to where the wind comes from, (-pi, pi], positive from starboard
 */
public record TrueWind(double speed, double angle) {
    /** What a boat with this velocity through the water feels: ahead and to starboard (m/s), level axes. */
    public ApparentWind apparent(double ahead, double starboard) {
        return ApparentWind.fromComponents(
                speed * StrictMath.cos(angle) + ahead, speed * StrictMath.sin(angle) + starboard);
    }

    /** What a boat without leeway feels at a speed (m/s). */
    public ApparentWind apparent(double boatSpeed) {
        return apparent(boatSpeed, 0);
    }

    /** Speed made good to windward (m/s) of a boat without leeway. */
    public double madeGood(double boatSpeed) {
        return boatSpeed * StrictMath.cos(angle);
    }
}
