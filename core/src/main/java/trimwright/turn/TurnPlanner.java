package trimwright.turn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.Well19937c;

/**
 * Finds the moves of a turn: the library's covariance matrix adaptation on a few gusts that serve every try, then a race of its
 * best tries in fresh gusts. The same setup gives the same plan.
 */
public final class TurnPlanner {
    /** Tries of one generation of the search: the library's advice for nine to eleven moves. */
    private static final int GENERATION = 10;

    /** Turns of a try, and of those so many that are sailed before it is seen whether the others are worth it: chosen. */
    private static final int SEARCHED = 20;

    private static final int FIRST = 4;

    /** Metres behind the best try by which the first turns end one: chosen, more than the other turns could bring back. */
    private static final double BEHIND = 40;

    /** First number of the search's gusts. */
    private static final long SEARCH = 1;

    /**
     * Metres for each share of spoilt turns, and for each second of a hull in the water: chosen, dearer than any turn; and dearer still
     * where a search at the first price has found nothing that is surely safe.
     */
    private static final double SPOILT = 600;

    private static final double SPOILT_DEARER = 1500;

    private static final double WET = 10;

    /** Metres for each share of a limit that a turn comes nearer than that share (-): chosen; few turns show by it what many would spoil. */
    private static final double NEAR = 400;

    private static final double NEARLY = 0.85;

    /** So many tries of the full plan race: chosen. */
    private static final int RACED = 6;

    /** So many tries are given reserves, more in a second search, of that much righting moment each, down to so much (-): chosen. */
    private static final int RESERVED = 6;

    private static final int RESERVED_MORE = 10;

    private static final double[] RESERVES = {0, 0.07, 0.14, 0.21};
    private static final double LEAST_MOMENT = 0.55;

    /** Share of turns from which touching is what the plan does (-): chosen. */
    private static final double MOSTLY = 0.5;

    /** Spread with which the search begins, in shares of the span (-): chosen. */
    private static final double SPREAD = 0.2;

    private final TurnSetup setup;
    private final TurnSpan span;
    private final TurnSource source;
    private final int tries;

    /**
     * What is kept of a plan that shall be safe.
     *
     * @param moves the best that were found
     * @param isKept whether the race has shown that its chance is no more than the one allowed
     */
    public record Safe(TurnMoves moves, boolean isKept) {}

    /**
     * What is kept of a plan that shall lose little.
     *
     * @param moves the best that were found
     * @param touching planned where they bring a hull into the water in most turns
     */
    public record Full(TurnMoves moves, TurnSetup.Touching touching) {}

    /** What one search came to, and the share of its turns that it spoilt in the race. */
    private record Found(Safe safe, double spoilt) {}

    private record Try(TurnMoves moves, double price) {}

    /**
     * @param source sails the turns
     * @param tries about how many for each plan, 10 or more
     */
    public TurnPlanner(TurnSetup setup, TurnSource source, int tries) {
        this.setup = setup;
        this.source = source;
        this.tries = tries;
        span = TurnSpan.of(setup.kind());
    }

    /** Turns that one plan's search and race sail at most. */
    public static long most(int tries) {
        return 2 * ((long) SEARCHED * (tries + 2 * GENERATION) + TurnRace.MOST);
    }

    /** Least mean metres. */
    public Full full() {
        List<TurnMoves> best = search(span.begin(), TurnTally::metres);
        TurnRace.Runner first = new TurnRace(setup, source, TurnTally::metres)
                .sail(best.subList(0, Math.min(RACED, best.size())), 2)
                .get(0);
        boolean isWet =
                setup.touching() == TurnSetup.Touching.PLANNED || first.tally().touched() > MOSTLY;
        return new Full(first.moves(), isWet ? TurnSetup.Touching.PLANNED : TurnSetup.Touching.SPOILS);
    }

    /**
     * Least metres with the share of spoilt turns held under a chance, or as near as the search came to that.
     *
     * @param from moves to begin at, unless the span's own beginning is worth more
     * @param chance that is allowed (-)
     */
    public Safe safe(TurnMoves from, double chance) {
        Found first = safe(from, chance, SPOILT, RESERVED);
        if (first.safe().isKept()) {
            return first.safe();
        }
        Found second = safe(from, chance, SPOILT_DEARER, RESERVED_MORE);
        return second.safe().isKept() || second.spoilt() < first.spoilt() ? second.safe() : first.safe();
    }

    private Found safe(TurnMoves from, double chance, double spoilt, int reserved) {
        double wet = setup.touching() == TurnSetup.Touching.SPOILS ? WET : 0;
        ToDoubleFunction<TurnTally> price = tally -> tally.metres()
                + spoilt * tally.spoilt()
                + NEAR * tally.mean(turn -> Math.max(0, turn.closest() - NEARLY))
                + wet * tally.mean(TurnOutcome::wet);
        TurnMoves one = withReserve(from, RESERVES[1]);
        TurnMoves other = withReserve(span.at(setup.kind(), span.begin()), RESERVES[1]);
        boolean isBetter = worth(one, price, Double.POSITIVE_INFINITY) < worth(other, price, Double.POSITIVE_INFINITY);
        List<TurnMoves> tried = search(span.sharesOf(setup.kind(), isBetter ? one : other), price);
        List<TurnRace.Runner> left = new TurnRace(setup, source, price).sail(withReserves(tried, reserved), 3);
        TurnRace.Runner surest = TurnRace.surest(left, chance);
        TurnRace.Runner best = surest == null ? left.get(0) : surest;
        return new Found(new Safe(best.moves(), surest != null), best.tally().spoilt());
    }

    /** The best tries, each also with less of the moment carried: the reserve that costs least, and few gusts do not show its worth. */
    private static List<TurnMoves> withReserves(List<TurnMoves> best, int reserved) {
        List<TurnMoves> all = new ArrayList<>();
        for (TurnMoves moves : best.subList(0, Math.min(reserved, best.size()))) {
            for (double less : RESERVES) {
                all.add(withReserve(moves, less));
            }
        }
        return all;
    }

    private static TurnMoves withReserve(TurnMoves moves, double less) {
        double moment = Math.max(LEAST_MOMENT, moves.conduct().moment() - less);
        return moves.with(moves.conduct().withMoment(moment));
    }

    /** Tries, best first. */
    private List<TurnMoves> search(double[] begin, ToDoubleFunction<TurnTally> price) {
        int size = span.size();
        double[] sigma = new double[size];
        Arrays.fill(sigma, SPREAD);
        double[] one = new double[size];
        Arrays.fill(one, 1);
        int generations = Math.max(1, tries / GENERATION);
        CMAESOptimizer search = new CMAESOptimizer(
                generations,
                Double.NEGATIVE_INFINITY,
                true,
                0,
                0,
                new Well19937c(1),
                false,
                (i, before, after) -> i >= generations - 1);
        List<Try> kept = new ArrayList<>();
        double[] best = {Double.POSITIVE_INFINITY};
        search.optimize(
                new MaxEval(GENERATION * (generations + 2)),
                new ObjectiveFunction(shares -> {
                    TurnMoves moves = span.at(setup.kind(), shares);
                    double worth = worth(moves, price, best[0]);
                    best[0] = Math.min(best[0], worth);
                    kept.add(new Try(moves, worth));
                    return worth;
                }),
                GoalType.MINIMIZE,
                new SimpleBounds(new double[size], one),
                new InitialGuess(begin),
                new CMAESOptimizer.Sigma(sigma),
                new CMAESOptimizer.PopulationSize(GENERATION));
        return kept.stream()
                .sorted(Comparator.comparingDouble(Try::price))
                .map(Try::moves)
                .toList();
    }

    /** Price of a try; where its first turns are far behind the best of all tries, theirs. */
    private double worth(TurnMoves moves, ToDoubleFunction<TurnTally> price, double best) {
        List<TurnOutcome> turns = new ArrayList<>(source.sail(moves, SEARCH, FIRST));
        double first = price.applyAsDouble(TurnTally.of(setup, turns));
        if (first > best + BEHIND) {
            return first;
        }
        turns.addAll(source.sail(moves, SEARCH + FIRST, SEARCHED - FIRST));
        return price.applyAsDouble(TurnTally.of(setup, turns));
    }
}
