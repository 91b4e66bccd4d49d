package trimwright.section;

/**
 * The section's answer at one point, overwritten by each evaluation: a workspace, not a value to keep. Coefficients are
 * per dynamic pressure and TOTAL chord; {@code ...Alpha}, {@code ...Flap} are derivatives per rad, {@code ...LogRe} per
 * unit of the natural logarithm of the Reynolds number.
 */
public final class SectionPoint {
    /** Lift, across the stream (-). */
    public double cl;

    public double clAlpha;
    public double clFlap;
    public double clLogRe;

    /** Profile drag, along the stream (-), positive. */
    public double cd;

    public double cdAlpha;
    public double cdFlap;
    public double cdLogRe;

    /** Moment about the turning axis over chord squared (-), positive turns the nose to the side that alpha lifts to. */
    public double cm;

    public double cmAlpha;
    public double cmFlap;
    public double cmLogRe;

    /** Flap's moment about its pivot over FLAP chord squared (-), in the sense of the flap angle; air straightens: negative. */
    public double hinge;

    public double hingeAlpha;
    public double hingeFlap;
    public double hingeLogRe;

    /** Angle of attack left before stall on the side that lifts, or by tables the nearer (rad); negative: stalled. */
    public double stallMargin;

    public double stallMarginAlpha;
    public double stallMarginFlap;
    public double stallMarginLogRe;

    /** Flap angle (rad) and Reynolds number that are held through a search for the angle of attack. */
    public double flapAngle;

    public double reynolds;

    /** What the attached flow hands from one of its steps to the next. */
    final AttachedState attached = new AttachedState();

    /** What a section from tables keeps between its steps: here, since sections are shared by threads. */
    final HermiteTable.Spot spot = new HermiteTable.Spot();
}
