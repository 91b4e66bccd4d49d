package trimwright.learned;

import org.hipparchus.special.Erf;

/**
 * Density of what a boat lies off her best: symmetric noise of readings less a loss that is never negative, normal and half
 * normal. Aigner, Lovell and Schmidt, Formulation and estimation of stochastic frontier production function models,
 * Journal of Econometrics 6 (1977), eq. 8. Its logarithm has no second top, for it is concave.
 */
final class Frontier {
    private static final double HALF_LOG_TWO_OVER_PI = 0.5 * StrictMath.log(2 / Math.PI);
    private static final double HALF_LOG_TWO_PI = 0.5 * StrictMath.log(2 * Math.PI);

    /** Below it the series of the normal's tail is exact to rounding (-). */
    private static final double FAR = -20;

    private final double sigma;
    private final double lambda;

    /**
     * @param noise standard deviation of the symmetric part, above 0
     * @param loss scale of the one-sided part, 0 or above
     */
    Frontier(double noise, double loss) {
        sigma = StrictMath.hypot(noise, loss);
        lambda = loss / noise;
    }

    /** Logarithm of the density at an observation less the frontier. */
    double log(double off) {
        return HALF_LOG_TWO_OVER_PI
                - StrictMath.log(sigma)
                - 0.5 * off * off / (sigma * sigma)
                + logNormal(-off * lambda / sigma);
    }

    /** Slope of {@link #log} over its argument. */
    double slope(double off) {
        return -off / (sigma * sigma) - lambda / sigma * mills(-off * lambda / sigma);
    }

    /** Minus the second derivative of {@link #log}: above 0. */
    double curvature(double off) {
        double z = -off * lambda / sigma;
        double h = mills(z);
        return (1 + lambda * lambda * h * (z + h)) / (sigma * sigma);
    }

    /** Logarithm of the normal distribution function. */
    static double logNormal(double z) {
        if (z > FAR) {
            return StrictMath.log(0.5 * Erf.erfc(-z / StrictMath.sqrt(2)));
        }
        double inverse = 1 / (z * z);
        return -0.5 * z * z - StrictMath.log(-z) - HALF_LOG_TWO_PI + StrictMath.log1p(-inverse + 3 * inverse * inverse);
    }

    /** Normal density over normal distribution function. */
    static double mills(double z) {
        return StrictMath.exp(-0.5 * z * z - HALF_LOG_TWO_PI - logNormal(z));
    }
}
