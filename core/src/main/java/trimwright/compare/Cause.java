package trimwright.compare;

/** Where seconds of a leg go, in the order in which they are put back. */
public enum Cause {
    /** Down when the boat could have flown, put back to its own steady progress on the leg. */
    OFF_FOIL,
    /** Turns that nothing known forced, until VMG was back, put back to the boat's own steady progress on the leg. */
    TURNS_FREE,
    /** Turns at marks, at the boundary and for other boats, put back alike. */
    TURNS_FORCED,
    /** Wind that other boats took away. */
    OTHER_AIR,
    /** Another wing trim than the target's, and so less or more moment carried, by the model's derivatives. */
    TRIM,
    /** Another heel or ride height than the target's, by the model's derivatives. */
    HEEL_HEIGHT,
    /** Another angle than the reference's best, by what the reference itself loses at that angle. */
    ANGLE,
    /** Time in which there is no reference, counted whole. */
    UNJUDGED,
    /** All else. */
    REMAINING
}
