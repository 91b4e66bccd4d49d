package trimwright.practice;

/** What a person can take in hand of the wing; the computed hand has the rest. */
public enum WingPart {
    SHEET,
    TWIST,
    CAMBER,
    /** Putting the camber over in a turn. */
    INVERSION
}
