package trimwright.start;

/** Ways to lose seconds at full speed. */
public enum Delay {
    /** Sheet eased by half of what takes all power out of the wing, course held. */
    EASE(0.5, 0),
    /** Sheet eased until the wing pulls no more, course held. */
    DUMP(0, 0),
    /** Driver heads up, trim follows. */
    HEAD_UP(1, -Math.toRadians(20)),
    /** Driver bears away, trim follows. */
    BEAR_AWAY(1, Math.toRadians(20));

    private final double power;
    private final double off;

    Delay(double power, double off) {
        this.power = power;
        this.off = off;
    }

    /** Share of full power meanwhile (-). */
    public double power() {
        return power;
    }

    /** Course off the one across the line (rad), positive away from the wind. */
    public double off() {
        return off;
    }
}
