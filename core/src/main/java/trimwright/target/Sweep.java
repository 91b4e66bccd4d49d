package trimwright.target;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;

/** Best states of one task at rising angles, each search begun from its neighbours' answers. */
final class Sweep {
    private final Task task;
    private final double[] angles;
    private final @Nullable Answer[] answers;
    private final Outcome[] outcomes;

    Sweep(Task task, List<Double> angles) {
        this.task = task;
        this.angles = angles.stream().mapToDouble(Double::doubleValue).toArray();
        answers = new Answer[this.angles.length];
        outcomes = new Outcome[this.angles.length];
        Arrays.fill(outcomes, Outcome.NOT_TRIED);
    }

    /** Answer at an angle of the list, null where none was found. */
    @Nullable
    Answer at(int i) {
        return answers[i];
    }

    Outcome outcomeAt(int i) {
        return outcomes[i];
    }

    /**
     * Goes from an answer through the angles one way until one has no answer or takes off.
     *
     * @param from answer at some angle, need not be one of the list
     * @param first index of the first angle to search
     * @param way +1 to wider angles, -1 to narrower ones
     */
    void go(Answer from, int first, int way) {
        @Nullable Answer before = null;
        Answer last = from;
        for (int i = first; i >= 0 && i < angles.length && outcomes[i] == Outcome.NOT_TRIED; i += way) {
            Answer next = next(before, last, angles[i]);
            outcomes[i] = outcomeOf(next);
            if (outcomes[i] != Outcome.FOUND) {
                return;
            }
            answers[i] = next;
            before = last;
            last = next;
        }
    }

    /** Notes what a search from a guess gave at an angle. */
    void note(int i, Answer answer) {
        outcomes[i] = outcomeOf(answer);
        if (outcomes[i] == Outcome.FOUND) {
            answers[i] = answer;
        }
    }

    /** Between two angles at which the boat takes off it does so too. */
    void noteTakeOff(int low, int high) {
        for (int i = low; i <= high; i++) {
            outcomes[i] = Outcome.TAKES_OFF;
            answers[i] = null;
        }
    }

    /** Notes that at an angle without an answer the boat stays on its hulls with the wing stalled. */
    void noteStalled(int i) {
        outcomes[i] = Outcome.STALLED;
    }

    private Outcome outcomeOf(Answer answer) {
        if (Standing.isTakingOff(task, answer)) {
            return Outcome.TAKES_OFF;
        }
        return answer.isConverged() ? Outcome.FOUND : Outcome.NONE;
    }

    /** By the line through the last two answers, else from the last one, else by half the way first. */
    private Answer next(@Nullable Answer before, Answer last, double angle) {
        Answer next = task.atAngle(angle, start(before, last, angle), last);
        if (outcomeOf(next) == Outcome.NONE && before != null) {
            next = task.atAngle(angle, last.x(), last);
        }
        if (outcomeOf(next) == Outcome.NONE) {
            double place = SailingState.ofScaled(last.x()).get(Variable.TRUE_WIND_ANGLE);
            Answer half = task.atAngle(0.5 * (place + angle), last.x(), last);
            if (half.isConverged()) {
                next = task.atAngle(angle, half.x(), half);
            }
        }
        return next;
    }

    /** The line through the last two answers, at a new angle. */
    private static double[] start(@Nullable Answer before, Answer last, double angle) {
        double[] x = last.x();
        if (before == null) {
            return x;
        }
        double[] y = before.x();
        int place = Variable.TRUE_WIND_ANGLE.ordinal();
        double target = angle / Variable.TRUE_WIND_ANGLE.scale();
        double ratio = (target - x[place]) / (x[place] - y[place]);
        if (!(Math.abs(ratio) < 3)) {
            return x;
        }
        for (int i = 0; i < x.length; i++) {
            x[i] += ratio * (x[i] - y[i]);
        }
        return x;
    }

    /** Index of the answer with the most speed against the wind or down it, -1 where none has any. */
    int bestOf(TargetMode mode) {
        int best = -1;
        double most = 0;
        for (int i = 0; i < answers.length; i++) {
            Answer answer = answers[i];
            double speed = answer == null ? 0 : Goal.speed(mode).speed(SailingState.ofScaled(answer.x()));
            if (speed > most) {
                best = i;
                most = speed;
            }
        }
        return best;
    }

    /** Angle (rad) of a place in the list, the nearer end's beyond it. */
    double angleAt(int i) {
        return angles[Math.max(0, Math.min(angles.length - 1, i))];
    }
}
