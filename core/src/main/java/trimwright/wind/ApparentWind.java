package trimwright.wind;

/**
 * Wind as a sensor fixed to the boat feels it, in the boat's own deck plane.
 *
 * @param speed (m/s)
 * @param angle from the bow (rad), positive from starboard
 */
public record ApparentWind(double speed, double angle) {}
