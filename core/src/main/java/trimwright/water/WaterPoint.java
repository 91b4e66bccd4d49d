package trimwright.water;

/**
 * The water at one point.
 *
 * @param depth of the point below the surface as it stands there (m), negative above it
 * @param north velocity of the water to the north (m/s); above the surface that of the surface
 * @param east the same to the east (m/s)
 * @param down the same down (m/s)
 */
public record WaterPoint(double depth, double north, double east, double down) {}
