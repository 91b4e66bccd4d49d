package trimwright.wing;

/**
 * A small change of all that a wing over the sea answers to, to first order: any mixture of trim, place and air. Signed form, as
 * {@link WingSetting}.
 */
public final class WingChange {
    private static final double[] SAME = new double[0];

    private final double sheet;
    private final double camber;
    private final double twist;
    private final double twistMidRatio;
    private final double heel;
    private final double footHeight;
    private final double[] airX;
    private final double[] airY;
    private final double[] airZ;

    private WingChange(
            double sheet,
            double camber,
            double twist,
            double twistMidRatio,
            double heel,
            double footHeight,
            double[] airX,
            double[] airY,
            double[] airZ) {
        this.sheet = sheet;
        this.camber = camber;
        this.twist = twist;
        this.twistMidRatio = twistMidRatio;
        this.heel = heel;
        this.footHeight = footHeight;
        this.airX = airX;
        this.airY = airY;
        this.airZ = airZ;
    }

    /** Of the trim alone: signed sheet, camber and twist (rad), share of twist at half height (-). */
    public static WingChange ofTrim(double sheet, double camber, double twist, double twistMidRatio) {
        return new WingChange(sheet, camber, twist, twistMidRatio, 0, 0, SAME, SAME, SAME);
    }

    /**
     * Of place and air.
     *
     * @param heel signed roll (rad)
     * @param footHeight (m)
     * @param airX change of the air at each strip, body axes (m/s): forward; not to be written to any more
     * @param airY to starboard (m/s)
     * @param airZ down (m/s)
     */
    public static WingChange ofPlace(double heel, double footHeight, double[] airX, double[] airY, double[] airZ) {
        return new WingChange(0, 0, 0, 0, heel, footHeight, airX, airY, airZ);
    }

    double sheet() {
        return sheet;
    }

    double heel() {
        return heel;
    }

    double footHeight() {
        return footHeight;
    }

    boolean movesAir() {
        return airX.length > 0;
    }

    double airX(int strip) {
        return movesAir() ? airX[strip] : 0;
    }

    double airY(int strip) {
        return movesAir() ? airY[strip] : 0;
    }

    double airZ(int strip) {
        return movesAir() ? airZ[strip] : 0;
    }

    /** Change of the flap angle of a setting at a share of the way from foot to head (rad). */
    double flapAngle(WingSetting setting, double spanShare) {
        return camber * setting.flapAngleBy(WingControl.CAMBER, spanShare)
                + twist * setting.flapAngleBy(WingControl.TWIST, spanShare)
                + twistMidRatio * setting.flapAngleBy(WingControl.TWIST_MID_RATIO, spanShare);
    }
}
