package trimwright.motion;

/**
 * What the boat's own gauges could show at one instant; signed form.
 *
 * @param turningMoment of the air about the wing's turning axis (N m), positive: sheet grows
 * @param wingForward force of the air on the wing, body x (N)
 * @param wingStarboard force of the air on the wing, body y (N)
 * @param heeling moment of the air about the length axis at the origin (N m), starboard down positive
 * @param stallMargin least distance to stall on the wing (rad)
 * @param portMain upward force of the port main foil's tip (N)
 * @param starboardMain upward force of the starboard main foil's tip (N)
 * @param portElevator upward force of the port elevator (N)
 * @param starboardElevator upward force of the starboard elevator (N)
 * @param hullLift buoyancy of both hulls (N)
 * @param grindersRested what the grinders have left of their work above what they keep up for long (-), 0 to 1
 */
public record MotionLoads(
        double turningMoment,
        double wingForward,
        double wingStarboard,
        double heeling,
        double stallMargin,
        double portMain,
        double starboardMain,
        double portElevator,
        double starboardElevator,
        double hullLift,
        double grindersRested) {}
