package trimwright.crew;

/**
 * What the driver is told.
 *
 * @param way how to sail
 * @param tack +1 with the wind from starboard, -1 from port; another than now is a tack or a gybe
 * @param angle from the course to the wind (rad), tack-free; counts on a fixed course only, NaN else
 */
public record HelmOrder(Way way, int tack, double angle) {
    /** Ways of sailing. */
    public enum Way {
        UPWIND,
        DOWNWIND,
        /** On a given angle, whatever her speed. */
        COURSE
    }

    /** Against the wind or down it, at the best angle of the crew's card. */
    public HelmOrder(Way way, int tack) {
        this(way, tack, Double.NaN);
    }

    /** On that angle from the wind (rad). */
    public static HelmOrder course(double angle, int tack) {
        return new HelmOrder(Way.COURSE, tack, angle);
    }
}
