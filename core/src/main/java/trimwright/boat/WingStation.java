package trimwright.boat;

/**
 * One row of a wing's table.
 *
 * @param height above the wing's foot (m)
 * @param chord total chord, leading edge of the main element to trailing edge of the flap, straight (m)
 * @param thicknessRatio thickness of the main element over its own chord (-)
 */
public record WingStation(double height, double chord, double thicknessRatio) {}
