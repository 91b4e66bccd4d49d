package trimwright.wind;

/**
 * Horizontal velocity of the boat along and across its heading, over ground or through water.
 *
 * @param ahead (m/s)
 * @param starboard (m/s)
 */
public record BoatVelocity(double ahead, double starboard) {}
