package trimwright.weather;

/**
 * The air over one place at one time.
 *
 * @param air at the reference height
 * @param gusts what differs from it over height
 */
public record AirColumn(AirVelocity air, GustColumn gusts) {}
