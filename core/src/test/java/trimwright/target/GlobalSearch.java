package trimwright.target;

import java.util.Arrays;
import java.util.Map;
import java.util.SplittableRandom;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.MersenneTwister;
import org.jspecify.annotations.Nullable;
import trimwright.platform.Balanced;
import trimwright.platform.Balancer;
import trimwright.platform.Conditions;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;

/**
 * The fastest foiling state at an angle by Hipparchus' CMA-ES over the whole range of all controls, the boat balanced anew for
 * each trim, breaches of limits priced. It knows neither slopes nor neighbours of the book.
 */
final class GlobalSearch {
    /** A speed (scaled) that no breach is worth: multipliers of limits are below it. */
    private static final double PRICE = 3;

    /** Limits and ranges that are missed by less (scaled) count as kept. */
    private static final double KEPT = 1e-6;

    private static final int POPULATION = 24;

    private static final int ROUNDS = 60;

    /** First steps as shares of the ranges: begun anew from where it stopped, it gets past the edges of limits. */
    private static final double[] SHARES = {0.3, 0.1, 0.03};

    private final TrimProblem problem;
    private final Balancer balancer;
    private final SailingState middle;
    private SailingState last;
    private SailingState best;
    private double least = Double.POSITIVE_INFINITY;
    private double fastest;

    GlobalSearch(Platform platform, Conditions conditions, double angle) {
        problem = new Task(platform, conditions, Branch.FOILING, Map.of()).at(angle);
        balancer = new Balancer(platform, conditions, Balancer.FOILING);
        middle = FirstGuess.foiling(platform, conditions.wind().referenceSpeed(), angle);
        last = middle;
        best = middle;
    }

    /** The most speed (m/s) met in a state that keeps all equations and limits, zero where there was none. */
    double fastest(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] low = of(problem.lower());
        double[] high = of(problem.upper());
        double[] start = new double[low.length];
        for (int i = 0; i < low.length; i++) {
            start[i] = low[i] + random.nextDouble() * (high[i] - low[i]);
        }
        MersenneTwister twister = new MersenneTwister(seed);
        fastest = 0;
        last = middle;
        for (double share : SHARES) {
            double[] sigma = new double[low.length];
            for (int i = 0; i < low.length; i++) {
                sigma[i] = share * (high[i] - low[i]);
            }
            start = new CMAESOptimizer(ROUNDS, 0, true, 0, 0, twister, false, null)
                    .optimize(
                            new MaxEval(2 * ROUNDS * POPULATION),
                            new ObjectiveFunction(this::loss),
                            GoalType.MINIMIZE,
                            new SimpleBounds(low, high),
                            new InitialGuess(start),
                            new CMAESOptimizer.Sigma(sigma),
                            new CMAESOptimizer.PopulationSize(POPULATION))
                    .getPoint();
        }
        return fastest;
    }

    /** The best state that it met, allowed or not, improved by our own search: zero where that does not arrive. */
    double fastestImproved(Task task, double angle) {
        Answer answer = task.atAngle(angle, best);
        return answer.isConverged() ? SailingState.ofScaled(answer.x()).get(Variable.BOAT_SPEED) : 0;
    }

    private static double[] of(double[] x) {
        return NoBetterTrimPropertyTest.CONTROLS.stream()
                .mapToDouble(control -> x[control.ordinal()])
                .toArray();
    }

    private double loss(double[] trim) {
        Balanced found = balancedFrom(last, trim);
        if (found == null) {
            found = balancedFrom(middle, trim);
        }
        if (found == null) {
            return PRICE;
        }
        SailingState state = found.balance().state();
        last = state;
        double[] x = state.scaled();
        double[] row = problem.valuesAt(x);
        if (row == null) {
            return PRICE;
        }
        double[] limits = Arrays.copyOfRange(row, 1 + problem.equations(), row.length);
        double broken = 0;
        double most = 0;
        for (double limit : limits) {
            broken += Math.max(0, -limit);
            most = Math.max(most, -limit);
        }
        for (int i = 0; i < x.length; i++) {
            double outside = Math.max(problem.lower()[i] - x[i], x[i] - problem.upper()[i]);
            broken += Math.max(0, outside);
            most = Math.max(most, outside);
        }
        if (most < KEPT) {
            fastest = Math.max(fastest, state.get(Variable.BOAT_SPEED));
        }
        double loss = row[0] + PRICE * broken;
        if (loss < least) {
            least = loss;
            best = state;
        }
        return loss;
    }

    private @Nullable Balanced balancedFrom(SailingState from, double[] trim) {
        SailingState state = from;
        for (int i = 0; i < trim.length; i++) {
            Variable control = NoBetterTrimPropertyTest.CONTROLS.get(i);
            state = state.with(control, trim[i] * control.scale());
        }
        return balancer.balance(state) instanceof Balanced balanced ? balanced : null;
    }
}
