package trimwright.turn;

/**
 * When a turn is given up, and how.
 *
 * @param sign that is felt
 * @param least of it (rad, of speed and touch -)
 * @param action what is done then
 */
public record TurnAbort(Sign sign, double least, Action action) {
    /** What is felt before the camber goes over. */
    public enum Sign {
        TOUCH,
        LEEWARD,
        WINDWARD,
        SLOWING
    }

    /** What is done by it. */
    public enum Action {
        /** Driver back to the old course, sheet as in straight sailing. */
        BACK,
        /** The turn goes on, sheet eased beyond its trim for some seconds. */
        EASE
    }

    boolean shows(TurnSigns signs) {
        return signs.of(sign) >= least;
    }

    TurnAbort with(Action other) {
        return new TurnAbort(sign, least, other);
    }
}
