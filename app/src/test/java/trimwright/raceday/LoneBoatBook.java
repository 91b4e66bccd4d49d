package trimwright.raceday;

import trimwright.target.TargetBook;

/** The small target book round 15 kn that other packages' tests use too. */
public final class LoneBoatBook {
    private LoneBoatBook() {}

    public static TargetBook get() {
        return LoneBoat.targets();
    }
}
