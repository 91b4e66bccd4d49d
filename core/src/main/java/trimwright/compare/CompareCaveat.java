package trimwright.compare;

/** What a reader of a comparison must be told. */
public enum CompareCaveat {
    /** No reference for any of it. */
    NO_REFERENCE,
    /** No reference for more than a tenth of it. */
    PARTLY_WITHOUT_REFERENCE,
    /** Fewer than five independent stretches: the interval is a rough one. */
    FEW_INDEPENDENT_SAMPLES,
    /** The target itself carries a doubt in this wind. */
    TARGET_DOUBTFUL
}
