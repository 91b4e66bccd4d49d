package trimwright.section;

/**
 * The two-element section in closed form: attached flow with saturating lift, which past stall falls smoothly to a
 * separated plate. Twice differentiable, any angle.
 *
 * <p>Valid for flap angles to 40 degrees and Reynolds numbers of 0.5 to 8 million; beyond, finite but extrapolated. Left
 * out: hysteresis of stall, laminar bubbles, the slot's effect on drag, compressibility. Derivation, sources and misfits:
 * docs/theory/section.md.
 */
public final class ClosedFormSection implements SectionModel {
    private final AttachedFlow attached;
    private final StalledPlate plate;

    public ClosedFormSection(SectionShape shape, SectionTuning tuning) {
        attached = new AttachedFlow(shape, tuning);
        plate = new StalledPlate(shape, tuning, attached);
    }

    @Override
    public SectionPoint newPoint() {
        return SectionPoint.ofClosedForm();
    }

    @Override
    public void evaluate(double alpha, double flapAngle, double reynolds, SectionPoint out) {
        double sin = StrictMath.sin(alpha);
        double cos = StrictMath.cos(alpha);
        hold(flapAngle, reynolds, out);
        lift(sin, cos, out);
        complete(sin, cos, out);
    }

    @Override
    public void hold(double flapAngle, double reynolds, SectionPoint out) {
        SectionModel.super.hold(flapAngle, reynolds, out);
        attached.hold(flapAngle, reynolds, out.attached());
    }

    @Override
    public void lift(double sin, double cos, SectionPoint out) {
        attached.lift(sin, cos, out);
        if (plate.isMixed(out)) {
            // The plate mixes into everything at once.
            attached.complete(sin, cos, out);
            plate.mixInto(StrictMath.atan2(sin, cos), out.flapAngle, out.reynolds, out);
        }
    }

    @Override
    public void complete(double sin, double cos, SectionPoint out) {
        if (!plate.isMixed(out)) {
            attached.complete(sin, cos, out);
        }
    }
}
