package trimwright.segment;

/** Side that the wind comes from. */
public enum Tack {
    STARBOARD(1),
    PORT(-1);

    private final int sign;

    Tack(int sign) {
        this.sign = sign;
    }

    /** Of a signed angle of the wind from the bow (rad). */
    public static Tack of(double windAngle) {
        return windAngle >= 0 ? STARBOARD : PORT;
    }

    /** +1 with wind from starboard, -1 from port: turns signed values into values free of the tack and back. */
    public int sign() {
        return sign;
    }
}
