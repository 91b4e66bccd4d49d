package trimwright.target;

import org.jspecify.annotations.Nullable;
import trimwright.air.WindProfile;
import trimwright.platform.Conditions;
import trimwright.platform.SailingState;
import trimwright.target.search.Answer;

/**
 * First foiling answer of a task: from a guess where the wind is easy, then by steps of wind to the one asked. All within
 * the task, so that no task depends on another.
 */
final class Ladder {
    /** Winds (m/s) in which a guess leads to an answer most surely; chosen, tried in this order. */
    private static final double[] EASY = {7.2, 9, 6};

    /** True wind angles (rad) at which most boats foil first; chosen. */
    private static final double[] ANGLES = {1.8, 1.65, 2.0};

    /** Winds follow each other by at most this ratio; chosen. */
    private static final double STEP = 1.22;

    private final Task task;

    Ladder(Task task) {
        this.task = task;
    }

    /** An answer at some angle, or null. */
    @Nullable
    Answer first() {
        double wind = task.conditions().wind().referenceSpeed();
        for (double angle : ANGLES) {
            for (double easy : EASY) {
                Answer answer = climb(Math.min(easy, wind), wind, angle);
                if (answer == null && easy > wind) {
                    answer = descend(easy, wind, angle);
                }
                if (answer != null) {
                    return answer;
                }
            }
        }
        return null;
    }

    private @Nullable Answer climb(double from, double to, double angle) {
        Answer answer = cold(from, angle);
        double wind = from;
        while (answer != null && wind < to) {
            wind = Math.min(to, wind * STEP);
            answer = next(wind, angle, answer);
        }
        return answer;
    }

    private @Nullable Answer descend(double from, double to, double angle) {
        Answer answer = cold(from, angle);
        double wind = from;
        while (answer != null && wind > to) {
            wind = Math.max(to, wind / Math.sqrt(STEP));
            answer = next(wind, angle, answer);
        }
        return answer;
    }

    private @Nullable Answer cold(double wind, double angle) {
        SailingState guess = FirstGuess.foiling(task.platform(), wind, angle);
        Answer answer = in(wind).atAngle(angle, guess);
        return answer.isConverged() ? answer : null;
    }

    private @Nullable Answer next(double wind, double angle, Answer before) {
        Answer answer = in(wind).atAngle(angle, before.x(), before);
        return answer.isConverged() ? answer : null;
    }

    private Task in(double wind) {
        Conditions own = task.conditions();
        return wind == own.wind().referenceSpeed()
                ? task
                : task.in(new Conditions(WindProfile.overSea(wind), own.windward(), own.foils()));
    }
}
