package trimwright.section;

/**
 * The section while its flow is attached or just past stall: saturated lift, profile drag, moment, stall margin.
 *
 * <p>Thin-aerofoil flap theory with thickness, slot and viscous corrections. Numbers tied to the NLR 7301 two-element test
 * (lift, drag), an inviscid panel family of a wing-sail section (flap effectiveness, nose load, flap suction), the
 * pressure-difference rule (maximum lift over Reynolds number) and XFOIL polars (drag at zero flap): docs/theory/section.md.
 */
final class AttachedFlow {
    /** Lift slope gain of thickness (ideal fluid, Joukowski; total chord): 1 + 0.77 t/c. */
    private static final double THICKNESS_SLOPE = 0.77;

    /** Flap angle works as sin(k d)/k: fitted to the panel family, 10 to 35 degrees, within 2 percent. */
    private static final double FLAP_FADE = 1.25;

    /** Saturation power 8: fitted to the NLR 7301 lift curve (rms 0.007 of lift); lift at stall over saturated: 3.194/3.56. */
    static final double STALL_SHARE = 0.90;

    /** Unsaturated over saturated lift where the saturation law gives STALL_SHARE. */
    private static final double STALL_LOAD = STALL_SHARE / StrictMath.pow(1 - StrictMath.pow(STALL_SHARE, 8), 0.125);

    /** Nose load angle at the pressure-difference limit: 9 degrees at low, 16.8 at high Reynolds number. Panel family. */
    private static final double NOSE_LOW = Math.toRadians(9.0);

    private static final double NOSE_RISE = Math.toRadians(7.8);
    private static final double NOSE_LOG_RE = StrictMath.log(1.5e6);
    private static final double NOSE_STEEPNESS = 1.15;

    /** Effective flap angle where the flap's own suction ends the growth of lift (panel family: 32 degrees), and how. */
    private static final double FLAP_LIMIT = StrictMath.sin(FLAP_FADE * Math.toRadians(32.0)) / FLAP_FADE;

    private static final double FLAP_LIMIT_WIDTH = 0.08; // chosen: rounding, rad
    private static final double FLAP_LIMIT_LOSS = 0.5; // chosen: nose angle lost per flap angle beyond the limit

    /** Rounding of the floor that keeps maximum lift positive with flap against lift (rad), chosen. */
    private static final double FLOOR = 0.04;

    /** Rounding of the change of the lifting side, in sin of the lift angle, chosen. */
    private static final double SIDE = 0.1;

    /** Slot at which lift is best, over main chord: 2 percent (wing-sail section study); width of the optimum chosen. */
    private static final double SLOT_BEST = 0.02;

    private static final double SLOT_WIDTH = 0.05;

    /** Drag: one fit to NLR 7301 and XFOIL polars, within 12 percent; Reynolds power from both. */
    private static final double DRAG_FRICTION = 0.00473;

    private static final double DRAG_LIFT = 0.00153;
    private static final double DRAG_NOSE = 0.198;
    private static final double DRAG_LOSS = 0.138;
    private static final double DRAG_RE_POWER = -0.15;
    private static final double LOG_MILLION = StrictMath.log(1e6);

    /** Flap's nose suction valued as the main element's: panel family, at flap share 0.4. */
    private static final double DRAG_FLAP = 0.085;

    /** Reynolds number below which the laws of Reynolds number end (chosen). */
    private static final double RE_FLOOR = 1e4;

    /** Slot and forward pivot raise the flap's hinge moment over the sealed flap's: panel family, 1.5 of b1 and b2. */
    private static final double HINGE_GAIN = 1.5;

    private final ThinFlap flap;
    private final double arm;
    private final double slope;
    private final double plateau;
    private final double friction;
    private final double flapDrag;
    private final double attachedShare;

    AttachedFlow(SectionShape shape, SectionTuning tuning) {
        flap = ThinFlap.of(shape.flapChordRatio());
        arm = shape.turningAxisRatio() - 0.25;
        double mainShare = 1 - shape.flapChordRatio();
        double t = shape.thicknessRatio();
        double ideal = 2 * Math.PI * (1 + THICKNESS_SLOPE * t * mainShare);
        attachedShare = 1 - tuning.viscousLoss();
        slope = ideal * attachedShare;
        double off = (shape.slotGapRatio() - SLOT_BEST * mainShare) / SLOT_WIDTH;
        plateau = ideal / (STALL_SHARE * (1 + off * off));
        friction = DRAG_FRICTION * (1 + 2 * t + 60 * t * t * t * t); // Hoerner's form factor, from memory
        flapDrag = DRAG_FLAP * shape.flapChordRatio() / 0.4;
    }

    /** Lift before saturation (-). */
    double load(double alpha, double flapAngle) {
        return slope * StrictMath.sin(alpha + flap.effectiveness() * StrictMath.sin(FLAP_FADE * flapAngle) / FLAP_FADE);
    }

    /** Lift that comes of a load, given the lift it saturates at (-): load/(1 + z^8)^(1/8). */
    static double saturated(double load, double max) {
        double z = load / max;
        double z2 = z * z;
        double z8 = z2 * z2 * z2 * z2;
        return load / Math.sqrt(Math.sqrt(Math.sqrt(1 + z8)));
    }

    /** Friction drag (-) that is there at any angle. */
    double friction(double reynolds) {
        return friction * dragScale(logRe(reynolds));
    }

    /** Its derivative by log Reynolds number. */
    double frictionLogRe(double reynolds) {
        return DRAG_RE_POWER * logReSlope(reynolds) * friction(reynolds);
    }

    /** Notes what does not depend on the angle of attack. */
    void hold(double flapAngle, double reynolds, AttachedState at) {
        at.logRe = logRe(reynolds);
        at.logReR = logReSlope(reynolds);
        at.d = StrictMath.sin(FLAP_FADE * flapAngle) / FLAP_FADE;
        at.dD = StrictMath.cos(FLAP_FADE * flapAngle);
        double turn = flap.effectiveness() * at.d;
        at.sinTurn = StrictMath.sin(turn);
        at.cosTurn = StrictMath.cos(turn);
        at.sinNose = StrictMath.sin(flap.noseLoad() * at.d);
        at.cosNose = StrictMath.cos(flap.noseLoad() * at.d);
        double u = NOSE_STEEPNESS * (at.logRe - NOSE_LOG_RE);
        double uRoot = Math.sqrt(1 + u * u);
        at.nose = NOSE_LOW + NOSE_RISE * 0.5 * (1 + u / uRoot);
        at.noseR = NOSE_RISE * 0.5 / (uRoot * uRoot * uRoot) * NOSE_STEEPNESS * at.logReR;
        at.scale = dragScale(at.logRe);
    }

    /** Lift, and the stall margin where it is negative; where it is positive, a positive number that is not above it. */
    void lift(double sinAlpha, double cosAlpha, SectionPoint out) {
        // Endings: A by alpha, D by flap angle, R by log Reynolds number.
        AttachedState at = out.attached();
        double d = at.d;
        double dD = at.dD;

        // Lift before saturation, and the side it is on (-1 to 1).
        double eff = flap.effectiveness();
        double thetaD = eff * dD;
        // Angle of attack and flap together: theta = alpha + eff d.
        double sin = sinAlpha * at.cosTurn + cosAlpha * at.sinTurn;
        double cos = cosAlpha * at.cosTurn - sinAlpha * at.sinTurn;
        double load = slope * sin;
        double loadA = slope * cos;
        double loadD = loadA * thetaD;
        double root = Math.sqrt(sin * sin + SIDE * SIDE);
        double side = sin / root;
        double sideA = cos * SIDE * SIDE / (root * root * root);

        // Maximum lift: nose load angle at the pressure-difference limit, more with flap to the lifting side.
        double sigma = side * d;
        double over = sigma - FLAP_LIMIT;
        double overRoot = Math.sqrt(over * over + FLAP_LIMIT_WIDTH * FLAP_LIMIT_WIDTH);
        double gain = eff - flap.noseLoad();
        double limit = at.nose + gain * sigma - FLAP_LIMIT_LOSS * 0.5 * (over + overRoot);
        double limitSigma = gain - FLAP_LIMIT_LOSS * 0.5 * (1 + over / overRoot);
        double limitRoot = Math.sqrt(limit * limit + FLOOR * FLOOR);
        double top = 0.5 * (limit + limitRoot);
        // From 0 to less than a right angle.
        double sinTop = StrictMath.sin(top);
        double max = plateau * sinTop;
        double maxLimit = plateau * Math.sqrt(1 - sinTop * sinTop) * 0.5 * (1 + limit / limitRoot);
        double maxSigma = maxLimit * limitSigma;
        double maxA = maxSigma * sideA * d;
        double maxD = maxSigma * (sideA * thetaD * d + side * dD);
        double maxR = maxLimit * at.noseR;

        double z = load / max;
        double z2 = z * z;
        double z8 = z2 * z2 * z2 * z2;
        double g = 1 + z8;
        double g8 = Math.sqrt(Math.sqrt(Math.sqrt(g)));
        double liftLoad = 1 / (g8 * g);
        double liftMax = z * z8 * liftLoad;
        out.cl = saturated(load, max);
        out.clAlpha = liftLoad * loadA + liftMax * maxA;
        out.clFlap = liftLoad * loadD + liftMax * maxD;
        out.clLogRe = liftMax * maxR;

        // Stall where the load reaches STALL_LOAD of the maximum.
        double q = STALL_LOAD / slope * max;
        at.sin = sin;
        at.cos = cos;
        at.thetaD = thetaD;
        at.q = q;
        at.maxA = maxA;
        at.maxD = maxD;
        at.maxR = maxR;
        if (cos > 0 && Math.abs(sin) < q) {
            // Angles differ by more than their sines, and it takes none of the arcs.
            out.stallMargin = q - Math.abs(sin);
        } else {
            putStallMargin(out);
        }

        at.load = load;
        at.loadA = loadA;
        at.loadD = loadD;
    }

    /** All else, after {@link #lift} at the same angle of attack. */
    void complete(double sinAlpha, double cosAlpha, SectionPoint out) {
        AttachedState at = out.attached();
        double d = at.d;
        double dD = at.dD;
        putStallMargin(out);

        // Profile drag; what saturation takes from lift comes back as drag.
        double scale = at.scale;
        // Load of the nose: beta = alpha + its share of the flap.
        double sinBeta = sinAlpha * at.cosNose + cosAlpha * at.sinNose;
        double sin2Beta = 2 * sinBeta * (cosAlpha * at.cosNose - sinAlpha * at.sinNose);
        double d3 = d * d * d;
        double shape = friction + DRAG_LIFT * out.cl * out.cl + DRAG_NOSE * sinBeta * sinBeta + flapDrag * d3 * d;
        double loss = at.load - out.cl;
        out.cd = scale * shape + DRAG_LOSS * loss * loss;
        out.cdAlpha = scale * (2 * DRAG_LIFT * out.cl * out.clAlpha + DRAG_NOSE * sin2Beta)
                + 2 * DRAG_LOSS * loss * (at.loadA - out.clAlpha);
        double flapShape = DRAG_NOSE * sin2Beta * flap.noseLoad() + 4 * flapDrag * d3;
        out.cdFlap = scale * (2 * DRAG_LIFT * out.cl * out.clFlap + flapShape * dD)
                + 2 * DRAG_LOSS * loss * (at.loadD - out.clFlap);
        out.cdLogRe = scale * (DRAG_RE_POWER * at.logReR * shape + 2 * DRAG_LIFT * out.cl * out.clLogRe)
                - 2 * DRAG_LOSS * loss * out.clLogRe;

        // Moment: normal force at the quarter chord, and the flap's own couple.
        double ca = cosAlpha;
        double sa = sinAlpha;
        double couple = attachedShare * flap.moment();
        out.cm = arm * (out.cl * ca + out.cd * sa) + couple * d;
        out.cmAlpha = arm * (out.clAlpha * ca - out.cl * sa + out.cdAlpha * sa + out.cd * ca);
        out.cmFlap = arm * (out.clFlap * ca + out.cdFlap * sa) + couple * dD;
        out.cmLogRe = arm * (out.clLogRe * ca + out.cdLogRe * sa);
        double hinge = attachedShare * HINGE_GAIN;
        out.hinge = hinge * (flap.hingeAlpha() * sa + flap.hingeFlap() * d);
        out.hingeAlpha = hinge * flap.hingeAlpha() * ca;
        out.hingeFlap = hinge * flap.hingeFlap() * dD;
        out.hingeLogRe = 0;
    }

    private void putStallMargin(SectionPoint out) {
        AttachedState at = out.attached();
        double theta = StrictMath.atan2(at.sin, at.cos);
        double stallMax = STALL_LOAD / slope / Math.sqrt(1 - at.q * at.q);
        double reach = Math.sqrt(theta * theta + SIDE * SIDE);
        double sizeTheta = theta * (2 - theta * theta / (reach * reach)) / reach;
        out.stallMargin = StrictMath.asin(at.q) - theta * theta / reach;
        out.stallMarginAlpha = stallMax * at.maxA - sizeTheta;
        out.stallMarginFlap = stallMax * at.maxD - sizeTheta * at.thetaD;
        out.stallMarginLogRe = stallMax * at.maxR;
    }

    private static double logRe(double reynolds) {
        return 0.5 * StrictMath.log(reynolds * reynolds + RE_FLOOR * RE_FLOOR);
    }

    private static double logReSlope(double reynolds) {
        return reynolds * reynolds / (reynolds * reynolds + RE_FLOOR * RE_FLOOR);
    }

    private static double dragScale(double logRe) {
        return StrictMath.exp(DRAG_RE_POWER * (logRe - LOG_MILLION));
    }
}
