package trimwright.target;

import org.jspecify.annotations.Nullable;
import trimwright.target.search.Answer;

/**
 * First foiling answer of a task: from a guess where the wind is easy, then by steps of wind to the one asked. No task depends on
 * another: the steps in between are the same from wherever they are asked, so tasks may share them.
 */
final class Ladder {
    private final Task task;
    private final Rungs rungs;

    Ladder(Task task) {
        this(task, new Rungs(task));
    }

    /** @param rungs of the same boat, branch and held controls */
    Ladder(Task task, Rungs rungs) {
        this.task = task;
        this.rungs = rungs;
    }

    /** An answer at some angle, or null. */
    @Nullable
    Answer first() {
        double wind = task.conditions().wind().referenceSpeed();
        for (double angle : Rungs.ANGLES) {
            boolean isTried = false;
            for (double easy : Rungs.EASY) {
                Answer answer = null;
                if (easy < wind) {
                    answer = along(Rungs.Way.UP, easy, wind, angle);
                } else if (!isTried) {
                    // The guess is the same for every easy wind.
                    answer = Rungs.cold(task, angle);
                    isTried = true;
                }
                if (answer == null && easy > wind) {
                    answer = along(Rungs.Way.DOWN, easy, wind, angle);
                }
                if (answer != null) {
                    return answer;
                }
            }
        }
        return null;
    }

    /** From an easy wind by whole steps as long as they do not pass the wind asked, then to it. */
    private @Nullable Answer along(Rungs.Way way, double easy, double wind, double angle) {
        int steps = 0;
        while (way.isBefore(way.windAfter(easy, steps + 1), wind)) {
            steps++;
        }
        Answer last = rungs.at(way, easy, angle, steps);
        return last == null ? null : Rungs.next(task, angle, last);
    }
}
