package trimwright.target;

/**
 * What the trim holds, free of the tack.
 *
 * @param sheetLoad pull of the sheet at the wing (N); zero where it is slack
 * @param turningMoment of the air about the wing's turning axis (N m), positive where it eases the wing
 * @param rightingMoment of weights, crew and elevators about the leeward main foil (N m)
 * @param rightingMomentRatio righting moment over the largest that the limits allow in this attitude (-)
 * @param sideForce of the air, across the course, to leeward (N)
 * @param drive of the air along the course (N)
 */
public record Loads(
        double sheetLoad,
        double turningMoment,
        double rightingMoment,
        double rightingMomentRatio,
        double sideForce,
        double drive) {}
