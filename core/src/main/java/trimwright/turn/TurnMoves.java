package trimwright.turn;

import trimwright.crew.TurnConduct;

/**
 * What the trimmer, and for the rate of turn the driver, does in a turn. Angles are free of the tack: the apparent wind to the
 * bow counts positive on the side from which it comes before the turn, the sheet positive on the side to which it is set.
 *
 * @param lead from the driver's word until the bow moves (s); tacks and gybes wait for the second board where that is longer
 * @param ease sheet beyond the trim, from the word on (rad); negative: hauled
 * @param over apparent wind angle at which the camber goes over (rad), negative: after it has crossed; of no use without a new tack
 * @param across sheet from then on (rad), on the new side; negative: it stays short of the centreline
 * @param on apparent wind angle on the new side at which the trim of the new course is sheeted (rad); without a new tack the true
 *     wind angle at which the ease comes off
 * @param power incidence beyond the trim of the new course from then on, until she has her speed (rad)
 * @param conduct what driver and flight controller do
 */
public record TurnMoves(
        double lead, double ease, double over, double across, double on, double power, TurnConduct conduct) {
    TurnMoves with(TurnConduct other) {
        return new TurnMoves(lead, ease, over, across, on, power, other);
    }
}
