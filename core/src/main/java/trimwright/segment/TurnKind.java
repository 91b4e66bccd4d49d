package trimwright.segment;

/** Kinds of turn. */
public enum TurnKind {
    /** The bow passes through the wind. */
    TACK,
    /** The stern passes through the wind. */
    GYBE,
    /** To a lower point of sail on the same tack. */
    BEAR_AWAY,
    /** To a higher point of sail on the same tack. */
    ROUND_UP;

    /** Whether the tack changes, so that metres lost against sailing on can be told. */
    public boolean changesTack() {
        return this == TACK || this == GYBE;
    }
}
