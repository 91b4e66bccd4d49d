package trimwright.section;

/**
 * Thin aerofoil with a sealed flap in ideal fluid: the poorest rung, for limits and tests. No drag, no stall (margin pi
 * always), lift 2 pi sin(alpha + effectiveness x flap).
 */
public final class ThinSection implements SectionModel {
    private final ThinFlap flap;
    private final double axisArm;

    public ThinSection(SectionShape shape) {
        flap = ThinFlap.of(shape.flapChordRatio());
        axisArm = shape.turningAxisRatio() - 0.25;
    }

    @Override
    public void evaluate(double alpha, double flapAngle, double reynolds, SectionPoint out) {
        double theta = alpha + flap.effectiveness() * flapAngle;
        double slope = 2 * Math.PI * StrictMath.cos(theta);
        out.cl = 2 * Math.PI * StrictMath.sin(theta);
        out.clAlpha = slope;
        out.clFlap = slope * flap.effectiveness();
        out.clLogRe = 0;
        out.cd = 0;
        out.cdAlpha = 0;
        out.cdFlap = 0;
        out.cdLogRe = 0;
        // In ideal fluid the force is lift alone; its part across the chord acts at the quarter chord.
        out.cm = axisArm * out.cl * StrictMath.cos(alpha) + flap.moment() * flapAngle;
        out.cmAlpha = axisArm * (slope * StrictMath.cos(alpha) - out.cl * StrictMath.sin(alpha));
        out.cmFlap = axisArm * out.clFlap * StrictMath.cos(alpha) + flap.moment();
        out.cmLogRe = 0;
        out.hinge = flap.hingeAlpha() * alpha + flap.hingeFlap() * flapAngle;
        out.hingeAlpha = flap.hingeAlpha();
        out.hingeFlap = flap.hingeFlap();
        out.hingeLogRe = 0;
        out.stallMargin = Math.PI;
        out.stallMarginAlpha = 0;
        out.stallMarginFlap = 0;
        out.stallMarginLogRe = 0;
    }
}
