package trimwright.wing;

/**
 * A velocity of air in body axes.
 *
 * @param x forward (m/s)
 * @param y to starboard (m/s)
 * @param z down (m/s)
 */
public record AirVelocity(double x, double y, double z) {}
