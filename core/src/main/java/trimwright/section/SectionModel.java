package trimwright.section;

/**
 * A section in a uniform stream. Stateless, mirror-symmetric to the last bit: (-alpha, -flap) gives -cl, +cd, -cm.
 * Finite for every finite input.
 */
public interface SectionModel {
    /**
     * Fills {@code out}; makes no objects, since the wing calls it millions of times (Java's own sine may).
     *
     * @param alpha angle of the stream to the main element's chord (rad), any; positive lifts
     * @param flapAngle of the flap's chord to the main element's (rad), any; positive adds to the lift of positive alpha
     * @param reynolds on the total chord (-), not negative
     */
    void evaluate(double alpha, double flapAngle, double reynolds, SectionPoint out);

    /** A workspace with room for what this kind of section keeps between the three steps. */
    default SectionPoint newPoint() {
        return new SectionPoint();
    }

    /**
     * First of three steps to the same answer as {@link #evaluate}, for those who look for the angle of attack: notes in
     * {@code out} what stays meanwhile.
     *
     * @param flapAngle as there
     * @param reynolds as there
     */
    default void hold(double flapAngle, double reynolds, SectionPoint out) {
        out.flapAngle = flapAngle;
        out.reynolds = reynolds;
    }

    /**
     * Second step, as often as it takes: lift at an angle of attack and its slope by that, and the same of the stall margin where it is
     * negative. Where it is positive it may yet be too small; that and the rest of {@code out}, all other slopes among it, wait
     * for {@link #complete}.
     *
     * @param sin of the angle of attack; a stream's components give it sooner than the angle itself
     * @param cos of the angle of attack
     */
    default void lift(double sin, double cos, SectionPoint out) {
        evaluate(StrictMath.atan2(sin, cos), out.flapAngle, out.reynolds, out);
    }

    /** Third step: all else at the angle of attack of the last {@link #lift}. */
    default void complete(double sin, double cos, SectionPoint out) {}
}
