package trimwright.wing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The wing's force and the flow along its span. Strips count from the foot. */
public final class WingSolved implements WingAnswer {
    private final Wing wing;
    private final @Nullable StripFlow flow;
    private final WingForce force;
    private final double inducedDrag;
    private final double profileDrag;
    private final int stallStrip;
    private final int iterations;
    private final double[] circulation;
    private final double[] flap;
    private final double[] cl;
    private final double[] cd;
    private final double[] margin;
    private final double[] hinge;

    WingSolved(
            Wing wing,
            @Nullable StripFlow flow,
            WingForce force,
            double inducedDrag,
            double profileDrag,
            int stallStrip,
            int iterations,
            double[] circulation,
            double[] flap,
            double[] cl,
            double[] cd,
            double[] margin,
            double[] hinge) {
        this.wing = wing;
        this.flow = flow;
        this.force = force;
        this.inducedDrag = inducedDrag;
        this.profileDrag = profileDrag;
        this.stallStrip = stallStrip;
        this.iterations = iterations;
        this.circulation = circulation;
        this.flap = flap;
        this.cl = cl;
        this.cd = cd;
        this.margin = margin;
        this.hinge = hinge;
    }

    /** How force, moments and margins answer small changes of trim and wind: exact derivatives at the solution. */
    public WingSensitivity sensitivity() {
        return sensitivity(List.of(WingControl.values()));
    }

    /** The same by some controls only: by those of trim alone it takes a quarter less time, since nothing moves over the sea. */
    public WingSensitivity sensitivity(List<WingControl> controls) {
        return WingSensitivity.at(this, controls);
    }

    /**
     * How force and margins answer changes of trim, place and air: exact derivatives at the solution, one answer a change. Null in
     * still air.
     */
    public WingSlope @Nullable [] slopes(WingChange... changes) {
        return WingSensitivity.of(this, changes);
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
        return flow == null ? 0 : flow.alpha(strip);
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

    /**
     * Moment of the air on a strip's part of the flap about the flap's hinge (N m), in the sense of a growing signed flap
     * angle: against it where the air straightens the flap.
     */
    public double hingeMoment(int strip) {
        return hinge[strip];
    }

    /** The same of a whole panel of the flap (N m), panels counted from the foot. */
    public double panelHingeMoment(int panel) {
        return wing.sumOfPanel(panel, hinge);
    }

    /** Air past a strip, the wing's own part included: forward (m/s), body axes. */
    public double airX(int strip) {
        return flow == null ? 0 : flow.vx[strip];
    }

    /** Air past a strip, the wing's own part included: to starboard (m/s), body axes. */
    public double airY(int strip) {
        return flow == null ? 0 : flow.vy[strip];
    }

    Wing wing() {
        return wing;
    }

    /** The converged flow, not to be changed any more; null in still air. */
    @Nullable
    StripFlow flow() {
        return flow;
    }

    double[] circulations() {
        return circulation;
    }
}
