package trimwright.boat;

/**
 * How far the wing's controls go, free of the tack (rad).
 *
 * @param camberMax largest flap angle at the foot
 * @param twistMax largest difference between the flap angle at foot and head
 * @param headFlapMin least flap angle at the head; negative where the head may be put over
 * @param sheetMax largest angle of the whole wing to the centreline
 * @param stallMarginMin least distance to stall (rad of angle of attack) that a target may have at any height
 */
public record TrimRange(
        double camberMax, double twistMax, double headFlapMin, double sheetMax, double stallMarginMin) {}
