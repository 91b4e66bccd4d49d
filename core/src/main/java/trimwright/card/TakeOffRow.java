package trimwright.card;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.target.TargetPoint;

/**
 * Foil or not in one wind.
 *
 * @param wind true wind speed at 10 m (m/s)
 * @param foiling true wind angles of the book at which the boat foils once she is up (rad), rising
 * @param byHerself those of them at which she takes off by herself, on the leeward main foil
 * @param doubtful those of them of which the search could not tell
 * @param fromBeat how she leaves the water at the first angle below a beat on the hulls, null where she does not
 * @param fromRun the same at the first angle above a run on the hulls
 * @param bothBoards her fastest state with both main foils down at the angle where she is fastest on the hulls with one; null where it
 *     is not found
 * @param upwind best foiling and best on the hulls, made good against the wind
 * @param downwind the same down the wind
 */
public record TakeOffRow(
        double wind,
        List<Double> foiling,
        List<Double> byHerself,
        List<Double> doubtful,
        @Nullable LiftOff fromBeat,
        @Nullable LiftOff fromRun,
        @Nullable LiftOff bothBoards,
        Choice upwind,
        Choice downwind) {
    public TakeOffRow {
        foiling = List.copyOf(foiling);
        byHerself = List.copyOf(byHerself);
        doubtful = List.copyOf(doubtful);
    }

    /**
     * Two ways along the wind: each the target for it, or where that was not found the best of the book's angles.
     *
     * @param onFoils best target foiling, null where there is none
     * @param onHulls best target on the hulls, null where there is none
     */
    public record Choice(
            @Nullable TargetPoint onFoils, @Nullable TargetPoint onHulls) {
        /** Made good on the foils over that on the hulls (m/s); NaN where one of them is missing. */
        public double gain() {
            return onFoils == null || onHulls == null
                    ? Double.NaN
                    : onFoils.getTarget().velocityMadeGood()
                            - onHulls.getTarget().velocityMadeGood();
        }
    }
}
