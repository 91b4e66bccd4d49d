package trimwright.prepare;

/**
 * A wing in a uniform apparent wind, tack-free: SI and radians.
 *
 * @param windSpeed apparent wind speed (m/s)
 * @param windAngle apparent wind angle (rad), positive from starboard
 * @param camber flap angle at the foot (rad)
 * @param twist camber less flap angle at the head (rad)
 * @param twistMidRatio share of the twist reached at half the span
 * @param sheet angle of the wing to the centreline (rad)
 * @param heel to windward (rad)
 * @param rideHeight bottom of the hulls above the water (m)
 */
public record WingState(
        double windSpeed,
        double windAngle,
        double camber,
        double twist,
        double twistMidRatio,
        double sheet,
        double heel,
        double rideHeight) {
    /** +1 for wind from starboard, -1 from port. */
    int tack() {
        return windAngle < 0 ? -1 : 1;
    }
}
