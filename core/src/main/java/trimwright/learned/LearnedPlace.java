package trimwright.learned;

/**
 * What a season says at one place.
 *
 * @param wind true (m/s)
 * @param angle true wind angle from the course (rad), in [0, pi]
 * @param logRatio logarithm of best speed over that of the model (-), led to 0 where little supports it
 * @param error its standard error (-)
 * @param support how far it rests on sailing (-): 0 on the model alone, 1 on sailing alone
 * @param seconds of steady sailing near (s)
 * @param sessions in which these were sailed
 */
public record LearnedPlace(
        double wind, double angle, double logRatio, double error, double support, double seconds, int sessions) {
    /** Below this share of support it is the model that speaks (-): chosen. */
    public static final double ENOUGH = 0.5;

    /** 95 % of a normal distribution lie within so many standard errors. */
    private static final double WIDTH = 1.959964;

    /** Whether sailing says more here than the model. */
    public boolean isSupported() {
        return support >= ENOUGH;
    }

    /** Best speed over that of the model (-). */
    public double ratio() {
        return StrictMath.exp(logRatio);
    }

    /** Lower end of its interval of 95 % (-). */
    public double low() {
        return StrictMath.exp(logRatio - WIDTH * error);
    }

    /** Upper end of its interval of 95 % (-). */
    public double high() {
        return StrictMath.exp(logRatio + WIDTH * error);
    }
}
