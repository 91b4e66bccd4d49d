package trimwright.sim;

/**
 * What a boat's instruments say at the dock at one instant.
 *
 * @param flapMiddle flap angle at half height (rad), NaN where silent
 */
public record DockReading(Reading reading, double flapMiddle) {}
