package trimwright.units;

/** The two ranges of angle that the program knows, and the only mean of angles that is allowed. */
public final class Angles {
    private static final double TURN = 2 * Math.PI;

    private Angles() {}

    /** Wraps an angle (rad) into (-pi, pi]: for anything relative to the boat. */
    public static double signed(double angle) {
        double wrapped = Math.IEEEremainder(angle, TURN);
        return wrapped <= -Math.PI ? wrapped + TURN : wrapped;
    }

    /** Wraps an angle (rad) into [0, 2 pi): for compass directions. */
    public static double compass(double angle) {
        double wrapped = angle % TURN;
        if (wrapped < 0) {
            wrapped += TURN;
        }
        return wrapped >= TURN ? 0.0 : wrapped;
    }

    /** Signed way from {@code from} to {@code to} (rad), in (-pi, pi]. */
    public static double difference(double to, double from) {
        return signed(to - from);
    }
}
