package trimwright.call;

import trimwright.units.Units;

/**
 * How often, and on how much. Times in seconds.
 *
 * @param rest least time between calls
 * @param mostInLeg calls in a leg
 * @param leastSpeed difference under which nothing is said (m/s)
 * @param beforeTurn silence before an expected turn
 * @param beforeStart silence before a start
 * @param traffic distance to another boat under which nothing is said (m)
 * @param boundary distance to the boundary under which nothing is said (m)
 */
public record CallRules(
        double rest,
        int mostInLeg,
        double leastSpeed,
        double beforeTurn,
        double beforeStart,
        double traffic,
        double boundary) {
    /** Chosen: what a trimmer can follow and still feel the boat; distances are some three seconds at speed. */
    public static final CallRules DEFAULT =
            new CallRules(30, 3, Units.fromKnots(0.5), 5, 60, /* traffic= */ 60, /* boundary= */ 60);
}
