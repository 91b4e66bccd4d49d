package trimwright.water;

/**
 * How much of a thing is in the water, continuous with its first derivative. The edges are chosen, not physics: they
 * only have to be narrower than a trim change that matters and wide enough for a solver's step.
 */
public final class Wetting {
    private Wetting() {}

    /** 0 at or below no depth, 1 from {@code over} (m, positive) on. */
    public static double fraction(double depth, double over) {
        double x = Math.max(0, Math.min(1, depth / over));
        return x * x * (3 - 2 * x);
    }

    /** Slope of {@link #fraction} over the depth (1/m). */
    public static double fractionSlope(double depth, double over) {
        double x = Math.max(0, Math.min(1, depth / over));
        return 6 * x * (1 - x) / over;
    }

    /** Zero for a negative length, the length itself (m) from {@code over} (m, positive) on. */
    public static double length(double length, double over) {
        if (length >= over) {
            return length;
        }
        double x = Math.max(0, length / over);
        return over * x * x * (2 - x);
    }

    /** Slope of {@link #length} over the length (-). */
    public static double lengthSlope(double length, double over) {
        if (length >= over) {
            return 1;
        }
        double x = Math.max(0, length / over);
        return x * (4 - 3 * x);
    }
}
