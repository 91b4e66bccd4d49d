package trimwright.foil;

/**
 * Flow turned by a lifting surface, some way behind it. Elliptic load, flat wake that sinks with its own downwash and does
 * not roll up.
 */
public final class TandemWash {
    /** Rounds the wake's edge-on crossing (-) in semispans, chosen: about the thickness of a real wake. */
    private static final double ROUNDING = 0.05;

    private TandemWash() {}

    /** Downwash in the wake over the induced angle at the surface itself (-): tends to 2 far behind. */
    public static double growth(double distance, double span) {
        double overSemispan = 2 * distance / span;
        double k2 = 1 / (1 + overSemispan * overSemispan);
        return 1 + 2 / Math.PI * EllipticIntegrals.of(k2).second() / Math.sqrt(1 - k2);
    }

    /** Slope of {@link #growth} over the span (1/m). */
    static double growthSlope(double distance, double span) {
        double o = 2 * distance / span;
        EllipticIntegrals integrals = EllipticIntegrals.of(1 / (1 + o * o));
        double slope = (integrals.firstLessSecond() - integrals.second() / (o * o)) / Math.sqrt(1 + o * o);
        return -2 / Math.PI * slope * o / span;
    }

    /** Change of {@link #away} with changes of offset and span. */
    static double awayChange(double offset, double span, double byOffset, double bySpan) {
        double overSemispan = 2 * offset / span;
        double a = overSemispan * overSemispan + ROUNDING * ROUNDING;
        double bySquare = 2 * overSemispan * (2 * byOffset - overSemispan * bySpan) / span;
        return -0.5 * bySquare / (Math.sqrt(a / (a + 1)) * (a + 1) * (a + 1));
    }

    /** Change of {@link #sinking} with changes of angle and span. */
    static double sinkingChange(double inducedAngle, double distance, double span, double byAngle, double bySpan) {
        double semispan = 0.5 * span;
        double reach = Math.sqrt(distance * distance + semispan * semispan);
        return byAngle * (distance + reach - semispan) + inducedAngle * (semispan / reach - 1) * 0.5 * bySpan;
    }

    /** Downwash that far (m, either way) out of the wake's plane over that in it (-), at the wake's middle. */
    public static double away(double offset, double span) {
        double overSemispan = 2 * offset / span;
        double square = overSemispan * overSemispan;
        return 1 - Math.sqrt((square + ROUNDING * ROUNDING) / (square + ROUNDING * ROUNDING + 1));
    }

    /** How far the wake has sunk (m) that distance (m) behind, for that induced angle (rad); sign of the angle. */
    public static double sinking(double inducedAngle, double distance, double span) {
        double semispan = 0.5 * span;
        // Trailing vortices alone: the downwash grows as 1 + x / sqrt(x^2 + s^2).
        return inducedAngle * (distance + Math.sqrt(distance * distance + semispan * semispan) - semispan);
    }
}
