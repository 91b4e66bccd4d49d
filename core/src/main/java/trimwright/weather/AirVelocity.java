package trimwright.weather;

/**
 * Velocity of the air over ground.
 *
 * @param north (m/s)
 * @param east (m/s)
 */
public record AirVelocity(double north, double east) {
    public double speed() {
        return Math.sqrt(north * north + east * east);
    }

    /** Direction from which it blows, clockwise from north (rad), in (-pi, pi]. */
    public double from() {
        return StrictMath.atan2(-east, -north);
    }

    public AirVelocity plus(AirVelocity other) {
        return new AirVelocity(north + other.north, east + other.east);
    }
}
