package trimwright.dock;

/** What is the matter with a line. */
public enum DockFinding {
    /** Nothing. */
    NONE(Verdict.PASS),
    /** The list has not come so far. */
    NOT_YET(Verdict.NOTE),
    /** Nothing was heard of it. */
    DEAD(Verdict.STOP),
    /** It says the same all the time. */
    FROZEN(Verdict.STOP),
    /** It goes the other way: sign or sides are swapped. */
    SIGN(Verdict.STOP),
    /** Another gauge moved in its place. */
    SWAPPED(Verdict.STOP),
    /** It moves less than a quarter of the way. */
    HARDLY_MOVES(Verdict.STOP),
    /** The wind sensor turns with the wing, the boat file says that it does not. */
    TURNS(Verdict.STOP),
    /** The wind sensor does not turn with the wing, the boat file says that it does. */
    DOES_NOT_TURN(Verdict.STOP),
    /** Off by more than the tolerance; by four times as much it is a stop. */
    OFF(Verdict.NOTE),
    /** The interval of what was read reaches over the tolerance. */
    UNSURE(Verdict.NOTE),
    /** What is to be known for it was not given. */
    NOT_GIVEN(Verdict.NOTE),
    /** No such gauge is logged, and a boat may be without. */
    NOT_LOGGED(Verdict.NOTE),
    /** What it hangs on is itself at fault. */
    CANNOT_TELL(Verdict.NOTE);

    /** What follows for the crew. */
    public enum Verdict {
        PASS,
        /** Sail, and know it. */
        NOTE,
        /** Put it right first. */
        STOP
    }

    private final Verdict usual;

    DockFinding(Verdict usual) {
        this.usual = usual;
    }

    /** What follows from it where its size does not say more. */
    public Verdict usual() {
        return usual;
    }
}
