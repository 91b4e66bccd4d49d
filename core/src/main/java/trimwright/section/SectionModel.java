package trimwright.section;

/**
 * A section in a uniform stream. Stateless, mirror-symmetric to the last bit: (-alpha, -flap) gives -cl, +cd, -cm.
 * Finite for every finite input.
 */
public interface SectionModel {
    /**
     * Fills {@code out}; allocates nothing, since the wing calls it millions of times.
     *
     * @param alpha angle of the stream to the main element's chord (rad), any; positive lifts
     * @param flapAngle of the flap's chord to the main element's (rad), any; positive adds to the lift of positive alpha
     * @param reynolds on the total chord (-), not negative
     */
    void evaluate(double alpha, double flapAngle, double reynolds, SectionPoint out);
}
