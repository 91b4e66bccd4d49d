package trimwright.target;

/** The two ways of sailing, solved apart and never blended. */
public enum Branch {
    FOILING,
    DISPLACEMENT
}
