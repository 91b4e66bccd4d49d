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
        hold(flapAngle, reynolds, out);
        lift(alpha, out);
        complete(alpha, out);
    }

    @Override
    public void hold(double flapAngle, double reynolds, SectionPoint out) {
        SectionModel.super.hold(flapAngle, reynolds, out);
        attached.hold(flapAngle, reynolds, out.attached);
    }

    @Override
    public void lift(double alpha, SectionPoint out) {
        attached.lift(alpha, out);
        double x = (-out.stallMargin - FALL_BEGIN) / FALL_WIDTH;
        if (x > 0) {
            // The plate mixes into everything at once.
            attached.complete(alpha, out);
            blendWithPlate(Math.min(x, 1), alpha, out.flapAngle, out.reynolds, out);
        }
    }

    @Override
    public void complete(double alpha, SectionPoint out) {
        if (!(-out.stallMargin > FALL_BEGIN)) {
            attached.complete(alpha, out);
        }
    }

    /** Mixes a share of the plate, 0 to 1 over x, into the attached answer. */
    private void blendWithPlate(double x, double alpha, double flapAngle, double reynolds, SectionPoint out) {
        double w = x * x * x * (10 + x * (6 * x - 15));
        double y = x * (1 - x);
        double byMargin = -30 * y * y / FALL_WIDTH;
        double wA = byMargin * out.stallMarginAlpha;
        double wD = byMargin * out.stallMarginFlap;
        double wR = byMargin * out.stallMarginLogRe;

        // The plate lies along the line from the main element's nose to the flap's trailing edge.
        double main = 1 - flapShare;
        double cosFlap = StrictMath.cos(flapAngle);
        double lineX = main + flapShare * cosFlap;
        double lineY = flapShare * StrictMath.sin(flapAngle);
        double length2 = lineX * lineX + lineY * lineY + 1e-12; // never zero, even with the flap folded onto the main
        double tilt = StrictMath.atan2(lineY, lineX);
        double tiltD = flapShare * (flapShare + main * cosFlap) / length2;
        double sin = StrictMath.sin(alpha + tilt);
        double cos = StrictMath.cos(alpha + tilt);
        double size = Plate.size(sin);
        double cn = Plate.normal(sin, size, plateDrag);
        double cnA = Plate.normalSlope(sin, size, plateDrag) * cos;
        double lift = cn * cos;
        double liftA = cnA * cos - cn * sin;
        double drag = cn * sin + attached.friction(reynolds);
        double dragA = cnA * sin + cn * cos;
        double centre = Plate.centre(cos, size);
        double moment = (axis - centre) * cn;
        double momentA = (axis - centre) * cnA - Plate.centreSlope(sin, cos, size) * cn;

        double v = 1 - w;
        double gapLift = lift - out.cl;
        double gapDrag = drag - out.cd;
        double gapMoment = moment - out.cm;
        out.cl += w * gapLift;
        out.clAlpha = v * out.clAlpha + w * liftA + wA * gapLift;
        out.clFlap = v * out.clFlap + w * liftA * tiltD + wD * gapLift;
        out.clLogRe = v * out.clLogRe + wR * gapLift;
        out.cd += w * gapDrag;
        out.cdAlpha = v * out.cdAlpha + w * dragA + wA * gapDrag;
        out.cdFlap = v * out.cdFlap + w * dragA * tiltD + wD * gapDrag;
        out.cdLogRe = v * out.cdLogRe + w * attached.frictionLogRe(reynolds) + wR * gapDrag;
        out.cm += w * gapMoment;
        out.cmAlpha = v * out.cmAlpha + w * momentA + wA * gapMoment;
        out.cmFlap = v * out.cmFlap + w * momentA * tiltD + wD * gapMoment;
        out.cmLogRe = v * out.cmLogRe + wR * gapMoment;
        double gapHinge = -HINGE_PLATE * cn - out.hinge;
        out.hinge = v * out.hinge - w * HINGE_PLATE * cn;
        out.hingeAlpha = v * out.hingeAlpha - w * HINGE_PLATE * cnA + wA * gapHinge;
        out.hingeFlap = v * out.hingeFlap - w * HINGE_PLATE * cnA * tiltD + wD * gapHinge;
        out.hingeLogRe = v * out.hingeLogRe + wR * gapHinge;
    }
}
