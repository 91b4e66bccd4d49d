package trimwright.target;

/** Why a target is to be doubted. */
public enum TargetCaveat {
    /** Asked for outside the winds or angles of the book; there is no target. */
    OUTSIDE_GRID("outside the winds or angles of the target book"),
    /** A neighbour in the book has no target of this kind, so the value between is rough. */
    NEAR_BRANCH_EDGE("close to where foiling ends, so the value is rough"),
    /** The boat foils on once it foils, but by itself it stays on its hulls here, the wing trimmed or stalled. */
    NOT_REACHED_BY_ITSELF("holds once foiling, but the boat does not take off by itself here"),
    /** No steady state on the hulls was found, and none that takes off: the search cannot tell. */
    TAKE_OFF_NOT_KNOWN("whether the boat takes off by itself here was not found out"),
    /** Slenderness or speed outside the published series of hulls. */
    HULL_OUTSIDE_SERIES("hull outside the published series"),
    /** The air would push the wing in: the rope is slack and does not hold it. */
    SLACK_SHEET("the sheet is slack");

    private final String sentence;

    TargetCaveat(String sentence) {
        this.sentence = sentence;
    }

    /** What a person reads. */
    public String sentence() {
        return sentence;
    }
}
