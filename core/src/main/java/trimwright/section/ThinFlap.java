package trimwright.section;

/**
 * Thin-aerofoil theory of a plain sealed flap: constants per rad of flap angle.
 *
 * <p>Source: Glauert's integrals as in Houghton and Carpenter, eq. (4.52) to (4.57); cos phi = 2F - 1 with F the flap's
 * share of the chord.
 *
 * @param lift lift a2 (-)
 * @param effectiveness lift a2 over 2 pi: angle of attack that one rad of flap is worth (-)
 * @param noseLoad share of the flap angle that loads the leading edge like angle of attack (-)
 * @param moment about the quarter chord, nose up (-), negative
 * @param hingeAlpha hinge moment b1 per rad of angle of attack, over flap chord squared (-), negative
 * @param hingeFlap hinge moment b2 per rad of flap angle (-), negative
 */
public record ThinFlap(
        double lift, double effectiveness, double noseLoad, double moment, double hingeAlpha, double hingeFlap) {
    /** Of a flap that takes this share of the chord (-), above 0 and below 1. */
    public static ThinFlap of(double flapChordRatio) {
        double f = flapChordRatio;
        double phi = StrictMath.acos(2 * f - 1);
        double rest = Math.PI - phi;
        double sin = StrictMath.sin(phi);
        double cos = StrictMath.cos(phi);
        double a2 = 2 * (rest + sin);
        double b1 = -(2 * rest * (2 * cos - 1) + 4 * sin - StrictMath.sin(2 * phi)) / (4 * f * f);
        double b2 = -((1 - StrictMath.cos(2 * phi)) - 2 * rest * rest * (1 - 2 * cos) + 4 * rest * sin)
                / (4 * Math.PI * f * f);
        return new ThinFlap(a2, a2 / (2 * Math.PI), rest / Math.PI, -0.5 * sin * (1 - cos), b1, b2);
    }
}
