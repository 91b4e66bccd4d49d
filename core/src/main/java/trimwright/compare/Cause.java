package trimwright.compare;

/**
 * Where seconds of a leg go, in the order in which they are put back. Causes that cannot be told without course, fleet
 * or trim derivatives are not members yet; what they cost stands in {@link #REMAINING}.
 */
public enum Cause {
    /** Down when the boat could have flown, put back to its own steady progress on the leg. */
    OFF_FOIL,
    /** Turns that nobody forced, until VMG was back, put back to the boat's own steady progress on the leg. */
    TURNS_FREE,
    /** Another angle than the reference's best, by what the reference itself loses at that angle. */
    ANGLE,
    /** Time in which there is no reference, counted whole. */
    UNJUDGED,
    /** All else: speed at the angle sailed. */
    REMAINING
}
