package trimwright.wing;

/** The wing's force and the flow along its span. Strips count from the foot. */
public final class WingSolved implements WingAnswer {
    private final WingForce force;
    private final double inducedDrag;
    private final double profileDrag;
    private final int stallStrip;
    private final int iterations;
    private final double trailX;
    private final double trailY;
    private final double trailZ;
    private final double[] circulation;
    private final double[] alpha;
    private final double[] flap;
    private final double[] cl;
    private final double[] cd;
    private final double[] margin;

    WingSolved(
            WingForce force,
            double inducedDrag,
            double profileDrag,
            int stallStrip,
            int iterations,
            double[] trail,
            double[] circulation,
            double[] alpha,
            double[] flap,
            double[] cl,
            double[] cd,
            double[] margin) {
        this.force = force;
        this.inducedDrag = inducedDrag;
        this.profileDrag = profileDrag;
        this.stallStrip = stallStrip;
        this.iterations = iterations;
        trailX = trail[0];
        trailY = trail[1];
        trailZ = trail[2];
        this.circulation = circulation;
        this.alpha = alpha;
        this.flap = flap;
        this.cl = cl;
        this.cd = cd;
        this.margin = margin;
    }

    /** Force and moment about the step, body axes. */
    public WingForce force() {
        return force;
    }

    /** Part of the drag that the trailing vortices make (N), along each strip's undisturbed air. */
    public double inducedDrag() {
        return inducedDrag;
    }

    /** Part of the drag that the sections make (N), along each strip's undisturbed air. */
    public double profileDrag() {
        return profileDrag;
    }

    /** Least distance to stall of all strips (rad of angle of attack); negative: that strip is stalled. */
    public double stallMargin() {
        return margin[stallStrip];
    }

    /** Strip with the least stall margin. */
    public int stallStrip() {
        return stallStrip;
    }

    public int iterations() {
        return iterations;
    }

    public int strips() {
        return circulation.length;
    }

    /** Circulation of a strip (m2/s), positive lifts to port. */
    public double circulation(int strip) {
        return circulation[strip];
    }

    /** Angle of attack of the main element, the wing's own downwash included (rad). */
    public double alpha(int strip) {
        return alpha[strip];
    }

    public double flapAngle(int strip) {
        return flap[strip];
    }

    /** Lift coefficient on total chord and local speed (-). */
    public double cl(int strip) {
        return cl[strip];
    }

    public double cd(int strip) {
        return cd[strip];
    }

    /** Distance to stall of a strip (rad of angle of attack). */
    public double stallMargin(int strip) {
        return margin[strip];
    }

    /** Common direction of the trailing vortices, body axes, unit length: forward, starboard, down. */
    double trail(int axis) {
        return axis == 0 ? trailX : axis == 1 ? trailY : trailZ;
    }

    double[] circulations() {
        return circulation;
    }
}
