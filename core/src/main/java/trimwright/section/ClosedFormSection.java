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
    public void evaluate(double alpha, double flapAngle, double reynolds, SectionPoint out) {
        attached.evaluate(alpha, flapAngle, reynolds, out);
        plate.mixInto(alpha, flapAngle, reynolds, out);
    }
}
