package trimwright.wing;

/**
 * No flow found.
 *
 * @param reason why
 * @param residual largest error left in a strip's circulation, over the mean strip's chord times speed (-); 0 if not tried
 */
public record WingNotSolved(Reason reason, double residual) implements WingAnswer {
    /** Why there is no answer. */
    public enum Reason {
        /** Newton's method found no root, mostly deep in stall, where several may exist. */
        NOT_CONVERGED,
        /** The root found has a force of more than 4.5 times dynamic pressure times area, which no wing has. */
        TOO_MUCH_FORCE,
        /** The air at the strips has no common direction along the sea to trail to. */
        NO_COMMON_WIND
    }
}
