package trimwright.target;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;

/** Finds the end of a goal on a ridge, beginning as far from the best state as the same end was from the last one. */
final class RidgeEnds {
    private final Task task;
    private final Map<Key, Found> last = new HashMap<>();

    RidgeEnds(Task task) {
        this.task = task;
    }

    Task task() {
        return task;
    }

    /** The answer of a goal, or null where none was found. */
    @Nullable
    Answer find(Goal goal, Answer best) {
        Key key = new Key(goal.kind(), goal.extreme());
        Found before = last.get(key);
        Answer answer = null;
        if (before != null) {
            answer = task.onRidge(goal, best, before.shifted(best), before.end);
        }
        if (answer == null || !answer.isConverged()) {
            answer = task.onRidge(goal, best, best.x(), null);
        }
        if (!answer.isConverged()) {
            last.remove(key);
            return null;
        }
        last.put(key, new Found(best, answer));
        return answer;
    }

    private record Key(Goal.Kind kind, @Nullable Variable extreme) {}

    private record Found(Answer best, Answer end) {
        double[] shifted(Answer other) {
            double[] x = other.x();
            double[] from = best.x();
            double[] to = end.x();
            for (int i = 0; i < x.length; i++) {
                x[i] += to[i] - from[i];
            }
            return x;
        }
    }
}
