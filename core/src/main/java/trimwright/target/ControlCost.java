package trimwright.target;

/**
 * What it costs to have one control of the wing elsewhere than at its target, the true wind angle kept.
 *
 * @param offByOne speed lost (m/s) with this control alone one degree off, to the side that eases (sheet out, less camber, more
 *     twist), the crew coming in as the moment falls; zero, as are the two changes alone, where the boat is so close to falling off
 *     her foils that no steady state tells it
 * @param tenth changes (rad, low is not positive, high not negative) that cost 0.1 knots while the righting moment is held: the sheet
 *     is set anew, or the camber where the sheet is what moves. A change ends earlier where a limit of the wing or its range does
 * @param threeTenths the same for 0.3 knots
 * @param aloneTenth change (rad, signed) that costs 0.1 knots with nothing else touched, to the side that eases; no limit asked
 * @param aloneThreeTenths the same for 0.3 knots
 * @param flatTop width (rad) over which the loss stays under 0.1 knots by second derivatives alone, the moment held, no limit
 *     asked; 23 degrees where it is wider or the speed has no top
 * @param together change of the control that is set anew per change of this one, the moment held (-)
 */
public record ControlCost(
        double offByOne,
        Band tenth,
        Band threeTenths,
        double aloneTenth,
        double aloneThreeTenths,
        double flatTop,
        double together) {
    private static final Band HERE = new Band(0, 0);

    /** Nothing known. */
    static final ControlCost NONE = new ControlCost(0, HERE, HERE, 0, 0, 0, 0);
}
