package trimwright.section;

import org.jspecify.annotations.Nullable;

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

    /**
     * Share of the separated branch (-) that is held through a search, 0 to 1, the rest being attached; NaN where the stall margin
     * says it, as in steady flow. Sections from tables know steady flow only.
     */
    public double separated = Double.NaN;

    private @Nullable AttachedState attached;
    private HermiteTable.@Nullable Spot spot;

    /** For sections of any kind. */
    public SectionPoint() {
        this(new AttachedState(), new HermiteTable.Spot());
    }

    private SectionPoint(@Nullable AttachedState attached, HermiteTable.@Nullable Spot spot) {
        this.attached = attached;
        this.spot = spot;
    }

    /** For sections in closed form: less memory, which costs a wing as much time as arithmetic; the rest is made if needed. */
    static SectionPoint ofClosedForm() {
        return new SectionPoint(new AttachedState(), null);
    }

    /** The same for sections from tables. */
    static SectionPoint ofTables() {
        return new SectionPoint(null, new HermiteTable.Spot());
    }

    /** What the attached flow in closed form keeps between its steps: here, since sections are shared by threads. */
    AttachedState attached() {
        AttachedState kept = attached;
        if (kept == null) {
            kept = new AttachedState();
            attached = kept;
        }
        return kept;
    }

    /** The same of a section from tables. */
    HermiteTable.Spot spot() {
        HermiteTable.Spot kept = spot;
        if (kept == null) {
            kept = new HermiteTable.Spot();
            spot = kept;
        }
        return kept;
    }
}
