package trimwright.sim;

import trimwright.boat.Boat;

/** The boat that a simulated day really sails, for tests that compute what she could do. */
public final class HiddenBoat {
    private HiddenBoat() {}

    public static Boat of(Boat described, Perturbation hidden) {
        return hidden.of(described);
    }
}
