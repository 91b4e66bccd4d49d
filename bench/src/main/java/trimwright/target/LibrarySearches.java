package trimwright.target;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.optim.nonlinear.vector.constrained.EqualityConstraint;
import org.hipparchus.optim.nonlinear.vector.constrained.InequalityConstraint;
import org.hipparchus.optim.nonlinear.vector.constrained.SQPOptimizerS;
import org.hipparchus.optim.nonlinear.vector.constrained.TwiceDifferentiableFunction;
import org.hipparchus.random.MersenneTwister;
import trimwright.platform.Balanced;
import trimwright.platform.Balancer;
import trimwright.platform.Conditions;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Problem;

/**
 * The searches of Hipparchus on our problem. The two without derivatives know no equations: the boat is balanced anew for each
 * trim, and breaches of limits are priced above any multiplier. The one with them gets our exact slopes.
 */
final class LibrarySearches {
    private static final Variable[] FREE = {
        Variable.CAMBER,
        Variable.TWIST,
        Variable.TWIST_MID_RATIO,
        Variable.HEEL,
        Variable.RIDE_HEIGHT,
        Variable.PITCH,
        Variable.ELEVATOR_DIFFERENTIAL,
        Variable.CREW_PLACE
    };

    private static final double PRICE = 10;
    private static final int MOST_CALLS = 20_000;
    private static final double FIRST_STEP = 0.1;
    private static final int RESTARTS = 30;

    private LibrarySearches() {}

    static void bobyqa(Platform platform, Conditions conditions, TrimProblem problem, double[] start, Finish finish) {
        Trimmed trimmed = new Trimmed(platform, conditions, problem, start, finish);
        double[] from = inside(problem, start);
        // Edges of limits stop it early: begun anew from where it stopped, it goes on.
        for (int i = 0; i < RESTARTS; i++) {
            from = new BOBYQAOptimizer(2 * FREE.length + 1, FIRST_STEP, 1e-8)
                    .optimize(
                            new MaxEval(MOST_CALLS),
                            new ObjectiveFunction(trimmed::at),
                            GoalType.MINIMIZE,
                            bounds(problem),
                            new InitialGuess(from))
                    .getPoint();
        }
    }

    static void cmaes(Platform platform, Conditions conditions, TrimProblem problem, double[] start, Finish finish) {
        double[] sigma = new double[FREE.length];
        Arrays.fill(sigma, FIRST_STEP);
        for (int i = 0; i < FREE.length; i++) {
            int k = FREE[i].ordinal();
            sigma[i] = Math.min(FIRST_STEP, problem.upper()[k] - problem.lower()[k]);
        }
        new CMAESOptimizer(MOST_CALLS, 0, true, 0, 0, new MersenneTwister(92), false, null)
                .optimize(
                        new MaxEval(MOST_CALLS),
                        new ObjectiveFunction(new Trimmed(platform, conditions, problem, start, finish)::at),
                        GoalType.MINIMIZE,
                        bounds(problem),
                        new InitialGuess(inside(problem, start)),
                        new CMAESOptimizer.Sigma(sigma),
                        new CMAESOptimizer.PopulationSize(12));
    }

    private static SimpleBounds bounds(TrimProblem problem) {
        double[] low = new double[FREE.length];
        double[] high = new double[FREE.length];
        for (int i = 0; i < FREE.length; i++) {
            low[i] = problem.lower()[FREE[i].ordinal()];
            high[i] = problem.upper()[FREE[i].ordinal()];
        }
        return new SimpleBounds(low, high);
    }

    private static double[] inside(TrimProblem problem, double[] x) {
        double[] trim = new double[FREE.length];
        for (int i = 0; i < FREE.length; i++) {
            int k = FREE[i].ordinal();
            trim[i] = Math.max(problem.lower()[k], Math.min(problem.upper()[k], x[k]));
        }
        return trim;
    }

    /** Speed lost at a trim, the boat balanced from the last state that was. */
    private static final class Trimmed {
        private final Balancer balancer;
        private final TrimProblem problem;
        private final Finish finish;
        private SailingState last;

        Trimmed(Platform platform, Conditions conditions, TrimProblem problem, double[] start, Finish finish) {
            this.balancer = new Balancer(platform, conditions, Balancer.FOILING);
            this.problem = problem;
            this.finish = finish;
            this.last = SailingState.ofScaled(start);
        }

        double at(double[] trim) {
            SailingState state = last;
            for (int i = 0; i < FREE.length; i++) {
                state = state.with(FREE[i], trim[i] * FREE[i].scale());
            }
            if (!(balancer.balance(state) instanceof Balanced found)) {
                return PRICE;
            }
            last = found.state();
            double[] x = last.scaled();
            double[] row = problem.valuesAt(x);
            finish.look(problem, x, row);
            if (row == null) {
                return PRICE;
            }
            double sum = row[0];
            for (int i = 1 + problem.equations(); i < row.length; i++) {
                sum += PRICE * Math.max(0, -row[i]);
            }
            for (int i = 0; i < x.length; i++) {
                sum += PRICE * Math.max(0, Math.max(problem.lower()[i] - x[i], x[i] - problem.upper()[i]));
            }
            return sum;
        }
    }

    static void sqp(Problem problem, double[] start) {
        Rows rows = new Rows(problem, start);
        double[] begin = Arrays.copyOf(start, rows.n);
        new SQPOptimizerS()
                .optimize(
                        new MaxIter(500),
                        new InitialGuess(begin),
                        new ObjectiveFunction(rows.objective()),
                        rows.equations(),
                        rows.limits());
    }

    /** The functions in the library's form; the angle, the last variable, stays. */
    private static final class Rows {
        private final Problem problem;
        private final double[] start;
        private final int n;
        private double[] known = new double[0];
        private double[] values = new double[0];
        private double[] knownSlopes = new double[0];
        private double[][] slopes = new double[0][];

        Rows(Problem problem, double[] start) {
            this.problem = problem;
            this.start = start;
            n = start.length - 1;
        }

        private double[] whole(double[] x) {
            double[] all = start.clone();
            System.arraycopy(x, 0, all, 0, n);
            return all;
        }

        private double[] values(double[] x) {
            if (!Arrays.equals(known, x)) {
                double[] row = problem.valuesAt(whole(x));
                if (row == null) {
                    throw new IllegalStateException("the model has no answer on the way");
                }
                values = row;
                known = x.clone();
            }
            return values;
        }

        private double[][] slopes(double[] x) {
            if (!Arrays.equals(knownSlopes, x)) {
                double[][] matrix = problem.slopesAt(whole(x));
                if (matrix == null) {
                    throw new IllegalStateException("the model has no answer on the way");
                }
                slopes = matrix;
                knownSlopes = x.clone();
            }
            return slopes;
        }

        TwiceDifferentiableFunction objective() {
            return new TwiceDifferentiableFunction() {
                @Override
                public int dim() {
                    return n;
                }

                @Override
                public double value(RealVector x) {
                    return values(x.toArray())[0];
                }

                @Override
                public RealVector gradient(RealVector x) {
                    return new ArrayRealVector(Arrays.copyOf(slopes(x.toArray())[0], n));
                }

                @Override
                public RealMatrix hessian(RealVector x) {
                    return MatrixUtils.createRealMatrix(n, n);
                }
            };
        }

        EqualityConstraint equations() {
            return new EqualityConstraint(new ArrayRealVector(problem.equations())) {
                @Override
                public int dim() {
                    return n;
                }

                @Override
                public RealVector value(RealVector x) {
                    return new ArrayRealVector(Arrays.copyOfRange(values(x.toArray()), 1, 1 + problem.equations()));
                }

                @Override
                public RealMatrix jacobian(RealVector x) {
                    return cut(slopes(x.toArray()), 1, problem.equations(), 0);
                }
            };
        }

        InequalityConstraint limits() {
            int first = 1 + problem.equations();
            int count = problem.limits();
            return new InequalityConstraint(new ArrayRealVector(count + 2 * n)) {
                @Override
                public int dim() {
                    return n;
                }

                @Override
                public RealVector value(RealVector x) {
                    double[] row =
                            Arrays.copyOf(Arrays.copyOfRange(values(x.toArray()), first, first + count), count + 2 * n);
                    for (int i = 0; i < n; i++) {
                        row[count + i] = x.getEntry(i) - problem.lower()[i];
                        row[count + n + i] = problem.upper()[i] - x.getEntry(i);
                    }
                    return new ArrayRealVector(row);
                }

                @Override
                public RealMatrix jacobian(RealVector x) {
                    RealMatrix matrix = cut(slopes(x.toArray()), first, count, 2 * n);
                    for (int i = 0; i < n; i++) {
                        matrix.setEntry(count + i, i, 1);
                        matrix.setEntry(count + n + i, i, -1);
                    }
                    return matrix;
                }
            };
        }

        private RealMatrix cut(double[][] all, int first, int count, int more) {
            double[][] part = new double[count + more][n];
            for (int i = 0; i < count; i++) {
                part[i] = Arrays.copyOf(all[first + i], n);
            }
            return new Array2DRowRealMatrix(part, false);
        }
    }
}
