package trimwright.boat;

/**
 * Where position is measured.
 *
 * @param aftOfBow behind the foremost point of the bows (m)
 * @param starboard to starboard of the centreline (m)
 */
public record Antenna(double aftOfBow, double starboard) {}
