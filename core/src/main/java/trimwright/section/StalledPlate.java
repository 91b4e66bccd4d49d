package trimwright.section;

/**
 * What becomes of a section past stall: lift stays for some degrees, then the answer goes over smoothly to a separated plate.
 * Twice differentiable in the margin, any angle.
 *
 * <p>Sources: {@link Plate}. The manner of going over is chosen; real lift breaks within a degree (docs/theory/section.md).
 */
final class StalledPlate {
    /** Lift falls to the plate's from 4 to 40 degrees past stall: chosen, gentle, so that the wing's equations stay solvable. */
    private static final double FALL_BEGIN = Math.toRadians(4.0);

    private static final double FALL_WIDTH = Math.toRadians(36.0);

    /** Hinge moment of a separated flap: share of the plate's normal force times half a flap chord. Chosen. */
    private static final double HINGE_PLATE = 0.4;

    private final AttachedFlow attached;
    private final double flapShare;
    private final double axis;
    private final double plateDrag;

    /** @param attached gives the friction that a separated section keeps */
    StalledPlate(SectionShape shape, SectionTuning tuning, AttachedFlow attached) {
        this.attached = attached;
        flapShare = shape.flapChordRatio();
        axis = shape.turningAxisRatio();
        plateDrag = tuning.plateDrag();
    }

    /** Whether the stall margin of an answer says that the plate has a share in it. */
    boolean isMixed(SectionPoint answer) {
        return -answer.stallMargin > FALL_BEGIN;
    }

    /** Changes an answer whose stall margin says that the section is stalled; others stay as they are. */
    void mixInto(double alpha, double flapAngle, double reynolds, SectionPoint out) {
        double x = (-out.stallMargin - FALL_BEGIN) / FALL_WIDTH;
        if (x > 0) {
            mix(Math.min(x, 1), alpha, flapAngle, reynolds, out);
        }
    }

    /** Mixes a share of the plate, 0 to 1 over x, into the attached answer. */
    private void mix(double x, double alpha, double flapAngle, double reynolds, SectionPoint out) {
        double w = x * x * x * (10 + x * (6 * x - 15));
        double y = x * (1 - x);
        mix(w, -30 * y * y / FALL_WIDTH, alpha, flapAngle, reynolds, out);
    }

    /** Changes an answer of attached flow to one that has that share (-) of the plate, whatever its stall margin. */
    void mixShareInto(double w, double alpha, double flapAngle, double reynolds, SectionPoint out) {
        mix(w, 0, alpha, flapAngle, reynolds, out);
    }

    private void mix(double w, double byMargin, double alpha, double flapAngle, double reynolds, SectionPoint out) {
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
