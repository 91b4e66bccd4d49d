package trimwright.boat;

/** The two sides of a boat. */
public enum Side {
    PORT(-1),
    STARBOARD(1);

    private final int sign;

    Side(int sign) {
        this.sign = sign;
    }

    /** Sign of y on this side in body axes (y to starboard): -1 or +1. */
    public int sign() {
        return sign;
    }
}
