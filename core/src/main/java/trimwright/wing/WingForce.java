package trimwright.wing;

/**
 * Force of the air on the wing and its moment about the wing's step, body axes.
 *
 * @param x forward (N)
 * @param y to starboard (N)
 * @param z down (N)
 * @param k roll, starboard down (N m)
 * @param m pitch, bow up (N m)
 * @param n yaw, bow to starboard (N m)
 */
public record WingForce(double x, double y, double z, double k, double m, double n) {
    static final WingForce NONE = new WingForce(0, 0, 0, 0, 0, 0);

    /** Height of effort above the foot, along the wing (m): roll moment over side force; NaN or infinite without one. */
    public double effortHeight() {
        return k / y;
    }

    /**
     * Moment about the turning axis (N m) in the sense of a growing signed sheet angle. On starboard tack a positive one
     * opens the wing and pulls on the sheet; on port tack a negative one does.
     */
    public double turningMoment() {
        // Sheet grows as the trailing edge goes to port, the nose to starboard: the sense of yaw, about the same axis.
        return n;
    }
}
