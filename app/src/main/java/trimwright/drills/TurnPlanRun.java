package trimwright.drills;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import trimwright.boatfile.BoatFile;
import trimwright.crew.TurnKind;
import trimwright.prepare.InParallel;
import trimwright.text.Progress;
import trimwright.turn.TurnMoves;
import trimwright.turn.TurnOutcome;
import trimwright.turn.TurnPlanner;
import trimwright.turn.TurnSetup;
import trimwright.turn.TurnTally;
import trimwright.turn.TurnTrials;

/** Finds the two plans of a turn and sails them, beside a turn without a plan, in gusts that the search has not seen. */
public final class TurnPlanRun {
    /** Tries of moves for each plan, and turns in unseen gusts by which it is judged: chosen. */
    public static final int TRIES = 96;

    public static final int CHECKED = 60;

    /** Largest chance of a spoilt turn where the boat file says nothing (-): chosen. */
    private static final double CHANCE = 0.05;

    /** Turns of a try: chosen. */
    private static final int SEARCHED = 12;

    /** Turns that one task sails. */
    private static final int TOGETHER = 4;

    /** First of the numbers that only the check draws from. */
    private static final long UNSEEN = 1001;

    private TurnPlanRun() {}

    /**
     * What was found.
     *
     * @param chance of a spoilt turn that the safe plan may have (-)
     * @param naive turns without a plan
     */
    public record Plans(TurnSetup setup, double chance, TurnTally naive, Plan full, Plan safe) {
        public TurnKind kind() {
            return setup.kind();
        }
    }

    /** Moves with what they came to in unseen gusts. */
    public record Plan(TurnMoves moves, TurnTally tally) {}

    /** Largest chance of a spoilt turn that the safe plan may have (-): the boat file's. */
    public static double chanceOf(BoatFile file) {
        Double own = file.boat().limits().turnChanceMax();
        return own == null ? CHANCE : own;
    }

    /** Steps that the search announces. */
    public static long steps(int tries) {
        return 2L * tries;
    }

    /**
     * The plans.
     *
     * @param tries of moves for each plan
     * @param checked turns in unseen gusts
     */
    public static Plans of(TurnSetup setup, double chance, int tries, int checked, Progress progress)
            throws InterruptedException {
        Trials search = new Trials(setup, TurnTrials.seeds(1, SEARCHED));
        TurnPlanner planner = new TurnPlanner(
                setup,
                moves -> {
                    progress.done(1);
                    return search.sail(part -> part.by(moves));
                },
                tries);
        TurnMoves full = planner.full();
        TurnMoves safe = planner.safe(full, chance);
        Trials check = new Trials(setup, TurnTrials.seeds(UNSEEN, checked));
        return new Plans(
                setup,
                chance,
                TurnTally.of(setup, check.sail(TurnTrials::naively)),
                new Plan(full, TurnTally.of(setup, check.sail(part -> part.by(full)))),
                new Plan(safe, TurnTally.of(setup, check.sail(part -> part.by(safe)))));
    }

    /** Turns in parts that know nothing of each other; the order of the outcomes is that of the seeds on any number of threads. */
    private static final class Trials {
        private final List<TurnTrials> parts;

        Trials(TurnSetup setup, List<Long> seeds) throws InterruptedException {
            List<List<Long>> groups = new ArrayList<>();
            for (int i = 0; i < seeds.size(); i += TOGETHER) {
                groups.add(seeds.subList(i, Math.min(seeds.size(), i + TOGETHER)));
            }
            parts = InParallel.map("turns", groups, group -> new TurnTrials(setup, group));
        }

        List<TurnOutcome> sail(Function<TurnTrials, List<TurnOutcome>> how) {
            try {
                return InParallel.map("turns", parts, how).stream()
                        .flatMap(List::stream)
                        .toList();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("the search was interrupted", e);
            }
        }
    }
}
