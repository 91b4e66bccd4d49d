package trimwright.drills;

import java.util.List;
import java.util.function.Function;
import java.util.stream.LongStream;
import trimwright.prepare.InParallel;
import trimwright.start.StartPlan;
import trimwright.start.StartPlanner;
import trimwright.start.StartSetup;
import trimwright.start.StartTrial;
import trimwright.text.Progress;

/** Plans a start: many boats in gusts of their own, each question put to all of them at once on all processors. */
public final class StartPlanRun {
    /** Boats where nothing is said: chosen, their spread is told to some tenths. */
    public static final int BOATS = 12;

    /** Courses across the line that a boat with a foiling card can be held on (deg): chosen. */
    public static final double LEAST_ANGLE_DEG = 40;

    public static final double MOST_ANGLE_DEG = 160;

    private StartPlanRun() {}

    /** Steps that the work announces. */
    public static long steps(int boats) {
        return (long) StartPlanner.QUESTIONS * boats;
    }

    /** @param boats how many, each in other gusts */
    public static StartPlan of(StartSetup setup, int boats, Progress progress) throws InterruptedException {
        List<Long> seeds = LongStream.rangeClosed(1, boats).boxed().toList();
        List<StartTrial> trials = InParallel.map("start", seeds, seed -> new StartTrial(setup, seed));
        return new StartPlanner(setup, new Asked(trials, progress)).plan();
    }

    /** Questions to those boats on all processors. */
    static StartPlanner.Trials asked(List<StartTrial> trials) {
        return new Asked(trials, Progress.NONE);
    }

    private record Asked(List<StartTrial> trials, Progress progress) implements StartPlanner.Trials {
        @Override
        public <T> List<T> all(Function<StartTrial, T> question) {
            try {
                return InParallel.map("start", trials, trial -> {
                    T answer = question.apply(trial);
                    progress.done(1);
                    return answer;
                });
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("the plan was interrupted", e);
            }
        }
    }
}
