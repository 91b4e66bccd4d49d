package trimwright.weather;

/**
 * What a wing has left in the air at one moment. The force of the air on the wing is taken apart along and across the flow.
 *
 * @param time when it was left (s)
 * @param north place of the wing then (m)
 * @param east place of the wing then (m)
 * @param speed of the flow past the wing (m/s)
 * @param towards direction to which the flow went past the wing, clockwise from north (rad)
 * @param drag force on the wing with the flow over dynamic pressure (m2), not negative
 * @param lift force on the wing to the right of the flow over dynamic pressure (m2)
 * @param area of the wing (m2)
 * @param height of the wing's head above the water (m)
 */
public record WakeSection(
        double time,
        double north,
        double east,
        double speed,
        double towards,
        double drag,
        double lift,
        double area,
        double height) {}
