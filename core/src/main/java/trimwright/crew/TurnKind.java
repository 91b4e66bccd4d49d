package trimwright.crew;

/** What a turn does to the wind. */
public enum TurnKind {
    /** Bow through the wind. */
    TACK,
    /** Stern through the wind. */
    GYBE,
    /** Same tack, from against the wind to down it. */
    BEAR_AWAY,
    /** Same tack, from down the wind to against it. */
    ROUND_UP
}
