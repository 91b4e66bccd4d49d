package trimwright.section;

/**
 * The two-element section in closed form: attached flow with saturating lift, which past stall falls smoothly to a
 * separated plate. Twice differentiable, any angle. Where the caller holds the share that is separated, attached and separated flow
 * are two branches of their own, each as far as it goes, and history is the caller's.
 *
 * <p>Valid for flap angles to 40 degrees and Reynolds numbers of 0.5 to 8 million; beyond, finite but extrapolated. Left
 * out: laminar bubbles, the slot's effect on drag, compressibility. Derivation, sources and misfits:
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
        if (isMixed(out)) {
            // The plate mixes into everything at once.
            attached.complete(sin, cos, out);
            double alpha = StrictMath.atan2(sin, cos);
            if (isHeld(out)) {
                plate.mixShareInto(out.separated, alpha, out.flapAngle, out.reynolds, out);
            } else {
                plate.mixInto(alpha, out.flapAngle, out.reynolds, out);
            }
        }
    }

    @Override
    public void complete(double sin, double cos, SectionPoint out) {
        if (!isMixed(out)) {
            attached.complete(sin, cos, out);
        }
    }

    private boolean isMixed(SectionPoint out) {
        return isHeld(out) ? out.separated > 0 : plate.isMixed(out);
    }

    private static boolean isHeld(SectionPoint out) {
        return !Double.isNaN(out.separated);
    }
}
