package trimwright.turn;

/**
 * What one turn came to.
 *
 * @param metres progress lost from the driver's word on to {@link TurnStart#counted} s after it (m), against a boat that is on
 *     her best new course at once
 * @param least speed in that time (m/s)
 * @param wet time for which a hull was in the water, none if one was before the word (s)
 * @param capsized whether she went over
 * @param elevator time past the windward elevator's limit until the turn was over (s); what was past as the word came counts
 *     once it has been within
 * @param sheet time past the sheet's limit (s), counted alike
 * @param leeward most heel to leeward of the wind's side (rad)
 * @param windward most heel to windward (rad)
 * @param widest largest apparent wind angle (rad)
 * @param helm from the word until the helm goes over (s)
 * @param over from the helm until the camber goes over (s), NaN where it does not
 * @param on from the helm until the new trim is sheeted (s), NaN where it never was
 * @param done from the helm until the new course is held (s), NaN where it is not
 * @param closest nearest approach to being spoilt (-): of loads and windward heel the largest share of what is allowed, of the lower
 *     hull's height over the water how much it lacks of {@link TurnStart#CLEAR}; 1 or more where it was
 * @param settled from the helm until the turn was over, the course held and speed back at 95 % of the card's (s), NaN where it
 *     was not
 * @param sheetWork what the sheet did
 * @param signs what could be felt early
 * @param logged metres that a debrief of the log would tell: made good less than by sailing on as before the helm went over, until
 *     95 % of that is back (m); NaN for turns on one tack and where she went over
 */
public record TurnOutcome(
        double metres,
        double least,
        double wet,
        boolean capsized,
        double elevator,
        double sheet,
        double leeward,
        double windward,
        double widest,
        double helm,
        double over,
        double on,
        double done,
        double closest,
        double settled,
        SheetWork sheetWork,
        TurnSigns signs,
        double logged) {
    public boolean touched() {
        return wet > 0;
    }
}
