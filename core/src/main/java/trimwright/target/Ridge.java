package trimwright.target;

import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;

/**
 * The flat ridge around a best state: which trims cost next to nothing while heel, crew and righting moment stay. docs/theory/target.md.
 */
final class Ridge {
    /**
     * Trims that cost less than this share of the speed count as equal to the best; of them the one least disturbed by a
     * gust is shown. Chosen, well under what a crew can hold, and half of the 0.1 per cent that the book is checked to.
     */
    private static final double EQUAL = 0.0005;

    /** Share of the best state's righting moment that a trim in the bands may give up (-); chosen, under what a crew sees. */
    private static final double MOMENT_LOSS = 0.002;

    private final RidgeEnds ends;
    private final TargetMode mode;
    private final Answer best;
    private final double speed;
    private final double moment;

    Ridge(RidgeEnds ends, TargetMode mode, Answer best) {
        this.ends = ends;
        this.mode = mode;
        this.best = best;
        speed = Goal.speed(mode).speed(state());
        moment = ends.task().momentOf(state());
    }

    private SailingState state() {
        return SailingState.ofScaled(best.x());
    }

    private Goal.Floor floor(double speedLoss, double momentLoss) {
        return new Goal.Floor((1 - speedLoss) * speed, moment - momentLoss * Math.abs(moment));
    }

    /** Of all trims as fast as the best, the state with the least heeling moment in a gust. */
    SailingState leastDisturbed() {
        Answer answer = ends.find(Goal.gust(mode, floor(EQUAL, EQUAL)), best);
        return answer == null ? state() : SailingState.ofScaled(answer.x());
    }

    /** How far each control goes, {@code shown} always inside, and what being off costs there. */
    TrimBands bands(SailingState shown) {
        return new TrimBands(
                band(Variable.CAMBER, shown),
                band(Variable.TWIST, shown),
                band(Variable.SHEET, shown),
                CostFinder.at(ends.task(), shown, best));
    }

    private Band band(Variable variable, SailingState shown) {
        double inside = shown.get(variable);
        double low = Math.min(inside, end(Goal.Kind.LOW_END, variable));
        double high = Math.max(inside, end(Goal.Kind.HIGH_END, variable));
        return new Band(low, high);
    }

    private double end(Goal.Kind kind, Variable variable) {
        if (ends.task().isHeld(variable)) {
            return state().get(variable);
        }
        Answer answer = ends.find(Goal.end(kind, mode, variable, floor(TrimBands.SPEED_LOSS, MOMENT_LOSS)), best);
        return (answer == null ? state() : SailingState.ofScaled(answer.x())).get(variable);
    }
}
