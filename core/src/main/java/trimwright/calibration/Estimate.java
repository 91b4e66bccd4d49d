package trimwright.calibration;

/**
 * What was found of one unknown.
 *
 * @param value (rad; of ratios the share above 1)
 * @param standardError in the same unit, of what is not known of all the others too
 * @param verdict whether it can be used
 */
public record Estimate(Unknown unknown, double value, double standardError, Verdict verdict) {
    /** Whether an estimate can be used. */
    public enum Verdict {
        /** Told apart from all others. */
        TOLD,
        /** Runs together with another unknown: the ties say which. */
        TOGETHER,
        /** The day has too little of what would show it. */
        TOO_LITTLE
    }

    /** Whether it may be taken off. */
    public boolean isTold() {
        return verdict == Verdict.TOLD;
    }
}
