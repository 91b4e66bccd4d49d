package trimwright.wind;

/**
 * Wind over the water or the ground, whichever the boat's velocity was measured against.
 *
 * @param speed (m/s)
 * @param angle from the bow (rad), positive from starboard
 */
public record TrueWind(double speed, double angle) {}
