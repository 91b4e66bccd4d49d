package trimwright.foil;

import trimwright.units.Units;

/**
 * What the nearness of the surface does to a level lifting foil. At speed the surface is a plane of constant pressure:
 * the image turns the same way as the foil, so lift falls and induced drag grows; more slowly the foil also makes waves.
 * Sources and derivations: docs/theory/foil.md.
 */
public final class FreeSurface {
    /** Lift factor of a two-dimensional foil one chord deep against depth Froude number; Hough and Moran 1969. */
    private static final MonotoneCurve ONE_CHORD_DEEP = new MonotoneCurve(
            new double[] {0, 1, 1.5, 2, 2.5, 4, 6, 8, 10, 25},
            // The last value is the limit for high speed; the table's 0.92 contradicts its own theory there.
            new double[] {1.00, 0.72, 0.60, 0.62, 0.65, 0.76, 0.85, 0.90, 0.91, highSpeedLiftFactor(1)});

    /** Bound of the loss of lift (-), chosen: the scaled table would take away more than all of it near the surface. */
    private static final double LOSS_MAX = 0.9;

    /** Keeps the wave number finite at rest (m2/s2), chosen: 0.1 m/s. */
    private static final double SPEED_FLOOR_SQUARED = 0.01;

    private FreeSurface() {}

    /** Lift of a two-dimensional foil at high speed over that in deep water (-), depth over chord (-). */
    public static double highSpeedLiftFactor(double depthOverChord) {
        double y = 16 * depthOverChord * depthOverChord;
        return (1 + y) / (2 + y);
    }

    /**
     * The same at any speed: the table for one chord, its loss scaled by the loss at high speed for the depth.
     *
     * @param depthFroude speed over the root of g times depth (-)
     */
    public static double liftFactor(double depthOverChord, double depthFroude) {
        double atOneChord = 1 - highSpeedLiftFactor(1);
        double loss = (1 - ONE_CHORD_DEEP.at(depthFroude)) * (1 - highSpeedLiftFactor(depthOverChord)) / atOneChord;
        double part = loss / LOSS_MAX;
        double p2 = part * part;
        double p8 = p2 * p2 * p2 * p2;
        // (1 + p^16)^(-1/16): no change worth naming below half of the bound
        return 1 - loss / Math.sqrt(Math.sqrt(Math.sqrt(Math.sqrt(1 + p8 * p8))));
    }

    /** Change of {@link #liftFactor} with changes of depth over chord and of depth Froude number. */
    static double liftFactorChange(double depthOverChord, double depthFroude, double byDepth, double byFroude) {
        double atOneChord = 1 - highSpeedLiftFactor(1);
        double below = 1 - ONE_CHORD_DEEP.at(depthFroude);
        double fast = 1 - highSpeedLiftFactor(depthOverChord);
        double part = below * fast / atOneChord / LOSS_MAX;
        double p2 = part * part;
        double p8 = p2 * p2 * p2 * p2;
        double bound = 1 + p8 * p8;
        double give = 1 / (bound * Math.sqrt(Math.sqrt(Math.sqrt(Math.sqrt(bound)))));
        double over = 2 + 16 * depthOverChord * depthOverChord;
        double fastSlope = -32 * depthOverChord / (over * over);
        double byLoss = below * fastSlope * byDepth - ONE_CHORD_DEEP.slopeAt(depthFroude) * fast * byFroude;
        return -give * byLoss / atOneChord;
    }

    /** Prandtl's biplane factor of a foil and its equal image (-), depth doubled over span, lambda (-). */
    public static double biplaneFactor(double lambda) {
        return biplaneFactor(lambda, biplaneIntegrals(lambda));
    }

    /** The integrals that the biplane factor and its slope are made of. */
    static EllipticIntegrals biplaneIntegrals(double lambda) {
        return EllipticIntegrals.of(1 / (1 + lambda * lambda));
    }

    static double biplaneFactor(double lambda, EllipticIntegrals integrals) {
        return 1 - 4 / Math.PI * lambda * Math.sqrt(1 + lambda * lambda) * integrals.firstLessSecond();
    }

    /** Slope of {@link #biplaneFactor} over lambda (-): d(K - E)/dm = E / (2 (1 - m)). */
    static double biplaneSlope(double lambda, EllipticIntegrals integrals) {
        double square = lambda * lambda;
        return -4
                / Math.PI
                * ((1 + 2 * square) * integrals.firstLessSecond() - integrals.second())
                / Math.sqrt(1 + square);
    }

    /** Gravity times span over speed squared (-), span (m), speed (m/s); finite at rest. */
    public static double waveNumber(double span, double speed) {
        return Units.G * span / (speed * speed + SPEED_FLOOR_SQUARED);
    }

    /** Slope of {@link #waveNumber} over the speed (s/m). */
    static double waveNumberSlope(double span, double speed) {
        double square = speed * speed + SPEED_FLOOR_SQUARED;
        return -2 * speed * Units.G * span / (square * square);
    }

    /**
     * Induced and wave drag over the induced drag in deep water (-): a closed form of Breslin's integral for elliptic
     * load, exact at high speed and at rest.
     *
     * @param lambda depth doubled over span (-)
     * @param sigma {@link #biplaneFactor} of that lambda (-)
     * @param beta {@link #waveNumber} (-)
     */
    public static double dragFactor(double lambda, double sigma, double beta) {
        // Constants fitted to the integral for lambda 0.25 to 3, all speeds; the test compares the two.
        double wave = 0.145 / Math.sqrt(lambda * lambda + 0.04);
        double s = lambda * beta;
        double fade = StrictMath.exp(-0.229 * s * s / (1 + 0.116 * s));
        return 1 - sigma + (2 * sigma + wave * beta) * fade;
    }

    /** Change of {@link #dragFactor} with changes of its three. */
    static double dragFactorChange(
            double lambda, double sigma, double beta, double byLambda, double bySigma, double byBeta) {
        double square = lambda * lambda + 0.04;
        double wave = 0.145 / Math.sqrt(square);
        double s = lambda * beta;
        double over = 1 + 0.116 * s;
        double fade = StrictMath.exp(-0.229 * s * s / over);
        double fadeSlope = -0.229 * s * (2 + 0.116 * s) / (over * over);
        double byS = byLambda * beta + lambda * byBeta;
        double byHeight = 2 * bySigma + wave * byBeta - wave * lambda / square * beta * byLambda;
        return -bySigma + fade * (byHeight + (2 * sigma + wave * beta) * fadeSlope * byS);
    }

    /** Lift slope of a foil under the surface (1/rad). */
    public static double liftSlope(double aspectRatio, double liftFactor, double sigma) {
        double section = 2 * Math.PI * liftFactor;
        return section / (1 + section * (1 + sigma) / (Math.PI * aspectRatio));
    }

    /** Change of {@link #liftSlope} with changes of lift factor and biplane factor. */
    static double liftSlopeChange(
            double aspectRatio, double liftFactor, double sigma, double byLiftFactor, double bySigma) {
        double section = 2 * Math.PI * liftFactor;
        double under = 1 + section * (1 + sigma) / (Math.PI * aspectRatio);
        return (2 * Math.PI * byLiftFactor - section * section * bySigma / (Math.PI * aspectRatio)) / (under * under);
    }
}
