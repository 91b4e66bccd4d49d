package trimwright.drills;

import java.util.function.Function;
import trimwright.boatfile.BoatFile;
import trimwright.crew.TurnKind;
import trimwright.text.Progress;
import trimwright.turn.AbortFinder;
import trimwright.turn.TurnMoves;
import trimwright.turn.TurnOutcome;
import trimwright.turn.TurnPlanner;
import trimwright.turn.TurnSetup;
import trimwright.turn.TurnSource;
import trimwright.turn.TurnStart;
import trimwright.turn.TurnTally;

/** Finds the two plans of a turn and sails them, beside a turn without a plan, in gusts that the search has not seen. */
public final class TurnPlanRun {
    /** Tries of moves for each plan, and turns in unseen gusts by which it is judged: chosen. */
    public static final int TRIES = 100;

    public static final int CHECKED = 200;

    /** Largest chance of a spoilt turn where the boat file says nothing (-): chosen. */
    private static final double CHANCE = 0.05;

    /** First of the numbers that only the check draws from. */
    private static final long UNSEEN = 7001;

    private TurnPlanRun() {}

    /**
     * What was found.
     *
     * @param chance of a spoilt turn that the safe plan may have (-)
     * @param isKept whether the safe plan keeps that chance, by the race that chose it and in the gusts of the check
     * @param straight the same gusts without a turn
     * @param naive turns without a plan
     */
    public record Plans(
            TurnSetup setup, double chance, boolean isKept, TurnTally straight, TurnTally naive, Plan full, Plan safe) {
        public TurnKind kind() {
            return setup.kind();
        }
    }

    /** Moves with what they came to in unseen gusts, and when to give the turn up. */
    public record Plan(TurnMoves moves, TurnTally tally, AbortFinder.Found abort) {}

    /** Largest chance of a spoilt turn that the safe plan may have (-): the boat file's. */
    public static double chanceOf(BoatFile file) {
        Double own = file.boat().limits().turnChanceMax();
        return own == null ? CHANCE : own;
    }

    /** Turns that the search announces: all that it could sail, many are not worth it. */
    public static long steps(int tries) {
        return 2 * TurnPlanner.most(tries);
    }

    /**
     * The plans.
     *
     * @param tries of moves for each plan
     * @param checked turns in unseen gusts
     */
    public static Plans of(TurnSetup setup, double chance, int tries, int checked, Progress progress) {
        TurnFleet fleet = new TurnFleet(setup);
        TurnSource source = (moves, first, count) -> {
            progress.done(count);
            return fleet.sail(first, count, start -> start.turn(moves));
        };
        TurnPlanner.Full full = new TurnPlanner(setup, source, tries).full();
        TurnSetup meant = setup.with(full.touching());
        TurnPlanner.Safe safe = new TurnPlanner(meant, source, tries).safe(full.moves(), chance);
        Plan safely = plan(meant, fleet, checked, safe.moves());
        return new Plans(
                meant,
                chance,
                safe.isKept() && safely.tally().spoilt() <= chance,
                check(meant, fleet, checked, TurnStart::straight),
                check(meant, fleet, checked, TurnStart::turnNaively),
                plan(meant, fleet, checked, full.moves()),
                safely);
    }

    /** The moves with what they come to. */
    static Plan plan(TurnSetup setup, TurnFleet fleet, int checked, TurnMoves moves) {
        TurnTally tally = check(setup, fleet, checked, start -> start.turn(moves));
        AbortFinder.Again again = (abort, number) -> fleet.sail(UNSEEN + number, 1, start -> start.turn(moves, abort))
                .get(0);
        return new Plan(moves, tally, new AbortFinder(setup, tally, again).find());
    }

    private static TurnTally check(
            TurnSetup setup, TurnFleet fleet, int checked, Function<TurnStart, TurnOutcome> how) {
        return TurnTally.of(setup, fleet.sail(UNSEEN, checked, how));
    }
}
