package trimwright.turn;

/**
 * What one turn came to.
 *
 * @param metres progress lost from the driver's word on to {@link TurnStart#COUNTED} s after it (m), against a boat that is on
 *     her best new course at once
 * @param least speed in that time (m/s)
 * @param touched whether a hull touched the water that did not before
 * @param capsized whether she went over
 * @param elevator time past the windward elevator's limit (s)
 * @param sheet time past the sheet's limit (s)
 * @param leeward most heel to leeward of the wind's side (rad)
 * @param windward most heel to windward (rad)
 * @param widest largest apparent wind angle (rad)
 * @param helm from the word until the helm goes over (s)
 * @param over from the helm until the camber goes over (s), NaN where it does not
 * @param on from the helm until the new trim is sheeted (s), NaN where it never was
 * @param done from the helm until the new course is held (s), NaN where it is not
 */
public record TurnOutcome(
        double metres,
        double least,
        boolean touched,
        boolean capsized,
        double elevator,
        double sheet,
        double leeward,
        double windward,
        double widest,
        double helm,
        double over,
        double on,
        double done) {}
