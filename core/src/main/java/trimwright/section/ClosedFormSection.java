package trimwright.section;

/**
 * The two-element section in closed form: thin-aerofoil flap theory with thickness, slot and viscous corrections, lift
 * that saturates and then falls smoothly to a plate's, profile drag with a bucket. Twice differentiable.
 *
 * <p>Tied to the NLR 7301 two-element test (lift, drag), an inviscid panel family of a wing-sail section (flap
 * effectiveness, nose load, flap suction), the pressure-difference rule with its digitised limits (maximum lift over
 * Reynolds number) and XFOIL polars (drag at zero flap). Valid for flap angles to 40 degrees, Reynolds 0.5 to 8 million;
 * beyond, finite but extrapolated. Left out: hysteresis of stall, laminar bubbles, slot width's effect on drag,
 * compressibility. Derivation and misfits: docs/theory/section.md.
 */
public final class ClosedFormSection implements SectionModel {
    /** Lift slope gain of thickness (ideal fluid, Joukowski; total chord): 1 + 0.77 t/c. */
    private static final double THICKNESS_SLOPE = 0.77;

    /** Flap angle works as sin(k d)/k: fitted to the panel family, 10 to 35 degrees, within 2 percent. */
    private static final double FLAP_FADE = 1.25;

    /** Saturation power: fitted to the NLR 7301 lift curve (rms 0.007 of lift). */
    private static final double SATURATION = 8;

    /** Lift at measured stall over saturated lift: NLR 7301, 3.194/3.56. */
    private static final double STALL_SHARE = 0.90;

    /** Unsaturated over saturated lift where the saturation law gives STALL_SHARE: (1/s^-8 - 1)^(1/8). */
    private static final double STALL_LOAD =
            STALL_SHARE / Math.pow(1 - Math.pow(STALL_SHARE, SATURATION), 1 / SATURATION);

    /** Nose load angle at the pressure-difference limit: 9 degrees at low, 16.8 at high Reynolds number. Panel family. */
    private static final double NOSE_LOW = Math.toRadians(9.0);

    private static final double NOSE_RISE = Math.toRadians(7.8);
    private static final double NOSE_LOG_RE = Math.log(1.5e6);
    private static final double NOSE_STEEPNESS = 1.15;

    /** Effective flap angle where the flap's own suction ends the growth of lift (panel family: 32 degrees), and how. */
    private static final double FLAP_LIMIT = Math.sin(FLAP_FADE * Math.toRadians(32.0)) / FLAP_FADE;

    private static final double FLAP_LIMIT_WIDTH = 0.08; // chosen: rounding, rad
    private static final double FLAP_LIMIT_LOSS = 0.5; // chosen: nose angle lost per flap angle beyond the limit

    /** Rounding of the floor that keeps maximum lift positive with flap against lift (rad), chosen. */
    private static final double FLOOR = 0.04;

    /** Rounding of the change of the lifting side, in sin of the lift angle, chosen. */
    private static final double SIDE = 0.1;

    /** Slot at which lift is best, over main chord: 2 percent (wing-sail section study); width of the optimum chosen. */
    private static final double SLOT_BEST = 0.02;

    private static final double SLOT_WIDTH = 0.05;

    /** Lift falls to the plate's from 4 to 40 degrees past stall: chosen, gentle, so that the wing's equations stay solvable. */
    private static final double FALL_BEGIN = Math.toRadians(4.0);

    private static final double FALL_END = Math.toRadians(40.0);

    /** Drag: one fit to NLR 7301 and XFOIL polars (docs/theory/section.md), within 12 percent; Reynolds power from both. */
    private static final double DRAG_FRICTION = 0.00473;

    private static final double DRAG_LIFT = 0.00153;
    private static final double DRAG_NOSE = 0.198;
    private static final double DRAG_LOSS = 0.138;
    private static final double DRAG_RE_POWER = -0.15;

    /** Flap's nose suction valued as the main element's: panel family, per flap share 0.4. */
    private static final double DRAG_FLAP = 0.085;

    /** Reynolds number below which the laws of Reynolds number end (chosen). */
    private static final double RE_FLOOR = 1e4;

    /** Slot and forward pivot raise the flap's hinge moment over the sealed flap's: panel family, 1.5 of b1 and b2. */
    private static final double HINGE_GAIN = 1.5;

    /** Load at the plate's rear, arm half a flap chord: chosen. */
    private static final double HINGE_PLATE = 0.4;

    private final ThinFlap flap;
    private final double flapShare;
    private final double axis;
    private final double slope;
    private final double plateau;
    private final double friction;
    private final double flapDrag;
    private final double attachedShare;
    private final double plateDrag;

    public ClosedFormSection(SectionShape shape, SectionTuning tuning) {
        flap = ThinFlap.of(shape.flapChordRatio());
        flapShare = shape.flapChordRatio();
        axis = shape.turningAxisRatio();
        double mainShare = 1 - flapShare;
        double ideal = 2 * Math.PI * (1 + THICKNESS_SLOPE * shape.thicknessRatio() * mainShare);
        attachedShare = 1 - tuning.viscousLoss();
        slope = ideal * attachedShare;
        double off = (shape.slotGapRatio() - SLOT_BEST * mainShare) / SLOT_WIDTH;
        plateau = ideal / (STALL_SHARE * (1 + off * off));
        double t = shape.thicknessRatio();
        friction = DRAG_FRICTION * (1 + 2 * t + 60 * t * t * t * t); // Hoerner's form factor, from memory
        flapDrag = DRAG_FLAP * flapShare / 0.4;
        plateDrag = tuning.plateDrag();
    }

    @Override
    public void evaluate(double alpha, double flapAngle, double reynolds, SectionPoint out) {
        // Endings: A by alpha, D by flap angle, R by log Reynolds number.
        double re2 = reynolds * reynolds + RE_FLOOR * RE_FLOOR;
        double logRe = 0.5 * Math.log(re2);
        double logReR = reynolds * reynolds / re2;
        double d = Math.sin(FLAP_FADE * flapAngle) / FLAP_FADE;
        double dD = Math.cos(FLAP_FADE * flapAngle);

        // Attached lift before saturation, and the side it is on (-1 to 1).
        double eff = flap.effectiveness();
        double theta = alpha + eff * d;
        double thetaD = eff * dD;
        double sin = Math.sin(theta);
        double cos = Math.cos(theta);
        double load = slope * sin;
        double loadA = slope * cos;
        double loadD = loadA * thetaD;
        double root = Math.sqrt(sin * sin + SIDE * SIDE);
        double side = sin / root;
        double sideA = cos * SIDE * SIDE / (root * root * root);

        // Maximum lift: nose load angle at the pressure-difference limit, more with flap to the lifting side.
        double u = NOSE_STEEPNESS * (logRe - NOSE_LOG_RE);
        double uRoot = Math.sqrt(1 + u * u);
        double nose = NOSE_LOW + NOSE_RISE * 0.5 * (1 + u / uRoot);
        double noseR = NOSE_RISE * 0.5 / (uRoot * uRoot * uRoot) * NOSE_STEEPNESS * logReR;
        double sigma = side * d;
        double over = sigma - FLAP_LIMIT;
        double overRoot = Math.sqrt(over * over + FLAP_LIMIT_WIDTH * FLAP_LIMIT_WIDTH);
        double gain = eff - flap.noseLoad();
        double limit = nose + gain * sigma - FLAP_LIMIT_LOSS * 0.5 * (over + overRoot);
        double limitSigma = gain - FLAP_LIMIT_LOSS * 0.5 * (1 + over / overRoot);
        double limitRoot = Math.sqrt(limit * limit + FLOOR * FLOOR);
        double top = 0.5 * (limit + limitRoot);
        double topLimit = 0.5 * (1 + limit / limitRoot);
        double max = plateau * Math.sin(top);
        double maxLimit = plateau * Math.cos(top) * topLimit;
        double maxSigma = maxLimit * limitSigma;
        double maxA = maxSigma * sideA * d;
        double maxD = maxSigma * (sideA * thetaD * d + side * dD);
        double maxR = maxLimit * noseR;

        // Saturated lift.
        double z = load / max;
        double z2 = z * z;
        double z8 = z2 * z2 * z2 * z2;
        double g = 1 + z8;
        double g8 = Math.sqrt(Math.sqrt(Math.sqrt(g)));
        double lift = load / g8;
        double liftLoad = 1 / (g8 * g);
        double liftMax = z * z8 * liftLoad;
        double liftA = liftLoad * loadA + liftMax * maxA;
        double liftD = liftLoad * loadD + liftMax * maxD;
        double liftR = liftMax * maxR;

        // Profile drag while attached; what lift saturation loses comes back as drag.
        double scale = Math.exp(DRAG_RE_POWER * (logRe - LOG_MILLION));
        double beta = alpha + flap.noseLoad() * d;
        double sinBeta = Math.sin(beta);
        double sin2Beta = Math.sin(2 * beta);
        double d3 = d * d * d;
        double shape = friction + DRAG_LIFT * lift * lift + DRAG_NOSE * sinBeta * sinBeta + flapDrag * d3 * d;
        double loss = load - lift;
        double drag = scale * shape + DRAG_LOSS * loss * loss;
        double dragA =
                scale * (2 * DRAG_LIFT * lift * liftA + DRAG_NOSE * sin2Beta) + 2 * DRAG_LOSS * loss * (loadA - liftA);
        double dragD = scale
                        * (2 * DRAG_LIFT * lift * liftD
                                + DRAG_NOSE * sin2Beta * flap.noseLoad() * dD
                                + 4 * flapDrag * d3 * dD)
                + 2 * DRAG_LOSS * loss * (loadD - liftD);
        double dragR =
                scale * (DRAG_RE_POWER * logReR * shape + 2 * DRAG_LIFT * lift * liftR) - 2 * DRAG_LOSS * loss * liftR;

        // Moment while attached: normal force at the quarter chord, flap's own couple.
        double ca = Math.cos(alpha);
        double sa = Math.sin(alpha);
        double arm = axis - 0.25;
        double couple = attachedShare * flap.moment();
        double moment = arm * (lift * ca + drag * sa) + couple * d;
        double momentA = arm * (liftA * ca - lift * sa + dragA * sa + drag * ca);
        double momentD = arm * (liftD * ca + dragD * sa) + couple * dD;
        double momentR = arm * (liftR * ca + dragR * sa);

        // Stall angle from the load at which the saturation law reaches measured stall.
        double q = STALL_LOAD / slope * max;
        double stall = Math.asin(q);
        double stallMax = STALL_LOAD / slope / Math.sqrt(1 - q * q);
        double reach = Math.sqrt(theta * theta + SIDE * SIDE);
        double size = theta * theta / reach;
        double sizeTheta = theta * (2 - theta * theta / (reach * reach)) / reach;
        out.stallMargin = stall - size;
        out.stallMarginAlpha = stallMax * maxA - sizeTheta;
        out.stallMarginFlap = stallMax * maxD - sizeTheta * thetaD;
        out.stallMarginLogRe = stallMax * maxR;
        double hinge = attachedShare * HINGE_GAIN * (flap.hingeAlpha() * sa + flap.hingeFlap() * d);

        // Share of the plate: 0 up to FALL_BEGIN past stall, 1 from FALL_END.
        double width = FALL_END - FALL_BEGIN;
        double x = (Math.abs(theta) - stall - FALL_BEGIN) / width;
        if (x <= 0) {
            out.cl = lift;
            out.clAlpha = liftA;
            out.clFlap = liftD;
            out.clLogRe = liftR;
            out.cd = drag;
            out.cdAlpha = dragA;
            out.cdFlap = dragD;
            out.cdLogRe = dragR;
            out.cm = moment;
            out.cmAlpha = momentA;
            out.cmFlap = momentD;
            out.cmLogRe = momentR;
            out.hinge = hinge;
            return;
        }
        double w = 1;
        double wx = 0;
        if (x < 1) {
            w = x * x * x * (10 + x * (6 * x - 15));
            double y = x * (1 - x);
            wx = 30 * y * y / width;
        }
        double sign = Math.signum(theta);
        double wA = wx * (sign - stallMax * maxA);
        double wD = wx * (sign * thetaD - stallMax * maxD);
        double wR = -wx * stallMax * maxR;

        // Plate along the line from the main element's nose to the flap's trailing edge.
        double main = 1 - flapShare;
        double cosFlap = Math.cos(flapAngle);
        double lineX = main + flapShare * cosFlap;
        double lineY = flapShare * Math.sin(flapAngle);
        double length2 = lineX * lineX + lineY * lineY + 1e-12; // never zero, even with the flap folded onto the main
        double tilt = Math.atan2(lineY, lineX);
        double tiltD = flapShare * (flapShare + main * cosFlap) / length2;
        double sp = Math.sin(alpha + tilt);
        double cp = Math.cos(alpha + tilt);
        double m = Plate.size(sp);
        double cn = Plate.normal(sp, m, plateDrag);
        double cnA = Plate.normalSlope(sp, m, plateDrag) * cp;
        double plateLift = cn * cp;
        double plateLiftA = cnA * cp - cn * sp;
        double plateFriction = scale * friction;
        double platePress = cn * sp;
        double plateDragA = cnA * sp + cn * cp;
        double den = 4 + Math.PI * m;
        double centre = 0.5 - 0.75 * cp / den;
        double centreA = 0.75 * (sp * den + cp * Math.PI * sp * cp / m) / (den * den);
        double plateMoment = (axis - centre) * cn;
        double plateMomentA = (axis - centre) * cnA - centreA * cn;

        double v = 1 - w;
        double gapLift = plateLift - lift;
        double gapDrag = platePress + plateFriction - drag;
        double gapMoment = plateMoment - moment;
        out.cl = v * lift + w * plateLift;
        out.clAlpha = v * liftA + w * plateLiftA + wA * gapLift;
        out.clFlap = v * liftD + w * plateLiftA * tiltD + wD * gapLift;
        out.clLogRe = v * liftR + wR * gapLift;
        out.cd = v * drag + w * (platePress + plateFriction);
        out.cdAlpha = v * dragA + w * plateDragA + wA * gapDrag;
        out.cdFlap = v * dragD + w * plateDragA * tiltD + wD * gapDrag;
        out.cdLogRe = v * dragR + w * plateFriction * DRAG_RE_POWER * logReR + wR * gapDrag;
        out.cm = v * moment + w * plateMoment;
        out.cmAlpha = v * momentA + w * plateMomentA + wA * gapMoment;
        out.cmFlap = v * momentD + w * plateMomentA * tiltD + wD * gapMoment;
        out.cmLogRe = v * momentR + wR * gapMoment;
        out.hinge = v * hinge - w * HINGE_PLATE * cn;
    }

    private static final double LOG_MILLION = Math.log(1e6);
}
