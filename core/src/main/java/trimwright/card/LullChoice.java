package trimwright.card;

import org.jspecify.annotations.Nullable;
import trimwright.target.TargetPoint;

/**
 * What to do when the wind drops while she foils along the wind.
 *
 * @param wind that it drops to (m/s)
 * @param staysUp best target on the foils in it; null where nothing holds her up
 * @param onHulls best target on the hulls in it; null where there is none
 * @param settleAfter length of lull from which coming down by choice pays, the next take-off in the old wind counted (s): 0 where nothing
 *     holds her up, infinite where she makes good more on the foils, NaN where no take-off is known
 */
public record LullChoice(
        double wind,
        @Nullable TargetPoint staysUp,
        @Nullable TargetPoint onHulls,
        double settleAfter) {
    /**
     * From one way of sailing along the wind.
     *
     * @param wind that it drops to (m/s)
     * @param after the row's choice in that wind
     * @param path the take-off in the wind before; null where none is known
     */
    public static LullChoice of(double wind, TakeOffRow.Choice after, @Nullable TakeOffPath path) {
        double gain = after.gain();
        double settle;
        if (after.onFoils() == null) {
            settle = 0;
        } else if (gain >= 0 || after.onHulls() == null) {
            settle = Double.POSITIVE_INFINITY;
        } else {
            settle = path == null ? Double.NaN : path.metresSpent() / -gain;
        }
        return new LullChoice(wind, after.onFoils(), after.onHulls(), settle);
    }
}
