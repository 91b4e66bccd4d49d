package trimwright.wing;

/**
 * How the wing is set, in the signed form: tack-free value times the tack (+1 wind from starboard, -1 from port).
 *
 * @param sheet angle of the main element to the centreline (rad), positive: trailing edge to port
 * @param camber flap angle at the foot (rad), positive: flap's trailing edge to starboard of the main element's line
 * @param twist camber less the flap angle at the head (rad), sign as camber
 * @param twistMidRatio share of the twist that is reached at half the span (-); 0.5 is linear. Has no tack
 */
public record WingSetting(double sheet, double camber, double twist, double twistMidRatio) {
    /**
     * Flap angle (rad) at a share of the way from foot to head (0 to 1): the parabola through foot, middle and head.
     */
    public double flapAngle(double spanShare) {
        return camber - twist * twistShare(spanShare);
    }

    /** Derivative of that flap angle by a control. */
    double flapAngleBy(WingControl control, double spanShare) {
        return switch (control) {
            case CAMBER -> 1;
            case TWIST -> -twistShare(spanShare);
            case TWIST_MID_RATIO -> -twist * 4 * spanShare * (1 - spanShare);
            case SHEET, AIR_SPEED, AIR_ANGLE, HEEL, FOOT_HEIGHT -> 0;
        };
    }

    private double twistShare(double spanShare) {
        return spanShare * ((4 * twistMidRatio - 1) + spanShare * (2 - 4 * twistMidRatio));
    }

    /** The same trim on the other tack. */
    public WingSetting mirror() {
        return new WingSetting(-sheet, -camber, -twist, twistMidRatio);
    }
}
