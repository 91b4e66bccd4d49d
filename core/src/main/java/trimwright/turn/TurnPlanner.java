package trimwright.turn;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.Well19937c;

/**
 * Finds the moves of a turn. The same gusts and delays serve every try, so that what differs is the moves; the search is the
 * library's covariance matrix adaptation. The same setup gives the same plan.
 */
public final class TurnPlanner {
    /** Tries of one generation of the search: the library's advice for six moves is eight or nine. */
    private static final int GENERATION = 8;

    /** Metres for each share of spoilt turns beyond the one allowed: chosen, dearer than any turn. */
    private static final double SPOILT = 600;

    private final TurnSetup setup;
    private final TurnSpan span;
    private final Function<TurnMoves, List<TurnOutcome>> trials;
    private final int tries;

    /**
     * @param trials sails all turns of a try; must give the same for the same moves
     * @param tries about how many for each plan, 8 or more
     */
    public TurnPlanner(TurnSetup setup, Function<TurnMoves, List<TurnOutcome>> trials, int tries) {
        this.setup = setup;
        this.trials = trials;
        this.tries = tries;
        span = TurnSpan.of(setup.kind());
    }

    /** Least mean metres. */
    public TurnMoves full() {
        double[] middle = new double[span.size()];
        Arrays.fill(middle, 0.5);
        return find(middle, TurnTally::metres);
    }

    /**
     * Least metres with the share of spoilt turns held under a chance where that can be.
     *
     * @param from moves to begin at
     * @param chance that is allowed (-)
     */
    public TurnMoves safe(TurnMoves from, double chance) {
        return find(
                span.sharesOf(setup.kind(), from),
                tally -> tally.metres() + SPOILT * Math.max(0, tally.spoilt() - chance));
    }

    private TurnMoves find(double[] begin, ToDoubleFunction<TurnTally> price) {
        int size = span.size();
        double[] sigma = new double[size];
        Arrays.fill(sigma, 0.25);
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
        double[] found = search.optimize(
                        new MaxEval(GENERATION * (generations + 2)),
                        new ObjectiveFunction(shares ->
                                price.applyAsDouble(TurnTally.of(setup, trials.apply(span.at(setup.kind(), shares))))),
                        GoalType.MINIMIZE,
                        new SimpleBounds(new double[size], one),
                        new InitialGuess(begin),
                        new CMAESOptimizer.Sigma(sigma),
                        new CMAESOptimizer.PopulationSize(GENERATION))
                .getPoint();
        return span.at(setup.kind(), found);
    }
}
