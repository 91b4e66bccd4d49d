package trimwright.target;

import org.jspecify.annotations.Nullable;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;

/**
 * Slopes of the best speed over wind and angle, by the envelope theorem (from memory: Nocedal and Wright, chapter 12): the
 * best value changes as f - lambda c - mu g does when only the parameter moves, so no search is needed.
 */
final class Envelope {
    /** Share of the wind, and scaled angle, that the parameter moves by for a central difference. */
    private static final double STEP = 1e-3;

    private Envelope() {}

    /** Slopes at a best answer of that mode, or null where the model has no answer beside it. */
    static @Nullable SpeedSlopes at(Task task, TargetMode mode, Answer answer) {
        double[] x = answer.x();
        // The flow at the answer is where the flows beside it begin.
        if (task.rowAt(mode, x) == null) {
            return null;
        }
        double calmer = value(answer, task.rowInWind(1 - STEP, mode, x));
        double windier = value(answer, task.rowInWind(1 + STEP, mode, x));
        double byWind = slope(calmer, windier) / task.conditions().wind().referenceSpeed();
        double byAngle = 0;
        if (mode == TargetMode.ANGLE) {
            double closer = value(answer, task.rowAt(mode, turned(x, -STEP)));
            double wider = value(answer, task.rowAt(mode, turned(x, STEP)));
            byAngle = slope(closer, wider) / Variable.TRUE_WIND_ANGLE.scale();
        }
        return Double.isNaN(byWind + byAngle) ? null : new SpeedSlopes(byWind, byAngle);
    }

    private static double slope(double before, double after) {
        return -Variable.BOAT_SPEED.scale() * (after - before) / (2 * STEP);
    }

    private static double[] turned(double[] x, double by) {
        double[] moved = x.clone();
        moved[Variable.TRUE_WIND_ANGLE.ordinal()] += by;
        return moved;
    }

    /** f - lambda c - mu g, or NaN where the model has no answer. */
    private static double value(Answer answer, double @Nullable [] row) {
        if (row == null) {
            return Double.NaN;
        }
        double sum = row[0];
        for (int i = 0; i < TrimProblem.EQUATIONS; i++) {
            sum -= answer.ofEquation(i) * row[1 + i];
        }
        for (LimitRow limit : LimitRow.values()) {
            sum -= answer.ofLimit(limit.ordinal()) * row[limit.place()];
        }
        return sum;
    }
}
