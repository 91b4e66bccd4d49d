package trimwright.target.search;

import org.jspecify.annotations.Nullable;

/**
 * Sequential quadratic programming inside a trust region (box), merit f and priced breaches (l1), one second-order
 * correction a step: Nocedal and Wright, Numerical Optimization, chapter 18 (from memory). Second
 * derivatives come from the problem and may be those of a place nearby; where the model is not convex in the
 * null space its eigenvalues are made positive.
 */
public final class Search {
    /** Largest step of any scaled variable at first; chosen. */
    private static final double FIRST_RADIUS = 0.5;

    private static final double LARGEST_RADIUS = 2;
    private static final double SMALLEST_RADIUS = 1e-9;

    /** Converged when the step of every scaled variable is below this, whatever it promises. */
    private static final double STEP_TOLERANCE = 1e-6;

    private static final int MOST_STEPS = 60;

    /** Given up when this many steps have not brought equations and limits nearer to holding; chosen. */
    private static final int PATIENCE = 8;

    private static final double NEARLY_KEPT = 5e-3;

    /** Given up when equations and limits hold and this many steps together gained less than {@link #LITTLE}; chosen. */
    private static final int SLOW = 12;

    private static final double LITTLE = 2e-3;

    private final Problem problem;
    private final Accuracy accuracy;
    private final Merit merit;
    private double radius = FIRST_RADIUS;
    private int steps;

    private Search(Problem problem, Accuracy accuracy) {
        this.problem = problem;
        this.accuracy = accuracy;
        this.merit = new Merit(problem);
    }

    /** Searches from a point. */
    public static Answer from(Problem problem, double[] start, Accuracy accuracy) {
        return new Search(problem, accuracy).run(start, Multipliers.zero(problem));
    }

    /** Searches from a point with the multipliers of a neighbouring answer of a problem of the same shape. */
    public static Answer from(Problem problem, double[] start, Answer neighbour, Accuracy accuracy) {
        return new Search(problem, accuracy).run(start, neighbour.multipliers());
    }

    private Answer run(double[] start, Multipliers known) {
        double[] x = insideBounds(start);
        Multipliers multipliers = known;
        Local local = localAt(x, problem.valuesAt(x));
        if (local == null) {
            return new Answer(Answer.Ending.STALLED, 0, x, multipliers, Double.POSITIVE_INFINITY);
        }
        Hessian hessian = null;
        double leastBroken = Double.POSITIVE_INFINITY;
        int stepOfLeast = 0;
        double atLastLook = Double.POSITIVE_INFINITY;
        while (steps < MOST_STEPS) {
            Curvature curvature = problem.curvatureAt(x);
            if (curvature == null) {
                return ended(Answer.Ending.STALLED, local, multipliers);
            }
            if (hessian == null) {
                hessian = new Hessian(curvature, problem.equations(), x.length);
            }
            hessian.moveTo(curvature);
            Step step = new StepFinder(local, hessian.ofLagrangian(multipliers), radius).find();
            double broken = Local.brokenMost(problem, local.values);
            if (isConverged(step) && broken < accuracy.broken()) {
                return ended(Answer.Ending.CONVERGED, local, step.multipliers);
            }
            if (broken < 0.9 * leastBroken || broken < NEARLY_KEPT) {
                leastBroken = broken;
                stepOfLeast = steps;
            } else if (steps - stepOfLeast > PATIENCE) {
                return ended(Answer.Ending.NO_ALLOWED_POINT, local, step.multipliers);
            }
            if (broken < NEARLY_KEPT) {
                if (steps % SLOW == 0) {
                    if (atLastLook - local.values[0] < LITTLE) {
                        return ended(Answer.Ending.STALLED, local, step.multipliers);
                    }
                    atLastLook = local.values[0];
                }
            } else {
                atLastLook = Double.POSITIVE_INFINITY;
            }
            Local next = tryStep(local, step);
            steps++;
            if (next == null) {
                if (radius < SMALLEST_RADIUS) {
                    return ended(endingWhenShort(broken), local, step.multipliers);
                }
                continue;
            }
            multipliers = step.multipliers;
            hessian.learn(local, next, multipliers);
            local = next;
            x = local.x;
        }
        double broken = Local.brokenMost(problem, local.values);
        return ended(broken > 1e-6 ? Answer.Ending.NO_ALLOWED_POINT : Answer.Ending.STALLED, local, multipliers);
    }

    private boolean isConverged(Step step) {
        double length = step.length();
        return length < STEP_TOLERANCE || (length < accuracy.step() && Math.abs(step.modelChange) < accuracy.gain());
    }

    private Answer.Ending endingWhenShort(double broken) {
        return broken < accuracy.broken() ? Answer.Ending.CONVERGED : Answer.Ending.NO_ALLOWED_POINT;
    }

    private Answer ended(Answer.Ending ending, Local local, Multipliers multipliers) {
        return new Answer(ending, steps, local.x, multipliers, Local.brokenMost(problem, local.values));
    }

    /** The next point, or null where the step is refused and the box made smaller. */
    private @Nullable Local tryStep(Local local, Step step) {
        merit.follow(step.multipliers);
        double before = merit.of(local.values);
        double promised = merit.promised(local, step);
        double[] trial = Dense.plus(local.x, 1, step.p);
        double[] values = problem.valuesAt(trial);
        double gained = values == null ? Double.NEGATIVE_INFINITY : before - merit.of(values);
        if (values != null && Local.brokenMost(problem, values) > accuracy.broken()) {
            double[] corrected = insideBounds(Dense.plus(trial, -1, local.wayBack(step, values)));
            double[] correctedValues = problem.valuesAt(corrected);
            if (correctedValues != null && before - merit.of(correctedValues) > gained) {
                trial = corrected;
                values = correctedValues;
                gained = before - merit.of(correctedValues);
            }
        }
        double length = step.length();
        Local next = values == null || !isGood(gained, promised) ? null : localAt(trial, values);
        if (next == null) {
            radius = 0.35 * Math.min(radius, length);
            return null;
        }
        double ratio = gained / Math.max(promised, 1e-16);
        if (ratio > 0.7 && length > 0.9 * radius) {
            radius = Math.min(LARGEST_RADIUS, 2 * radius);
        } else if (ratio < 0.2 && promised > 1e-9) {
            radius = Math.max(10 * STEP_TOLERANCE, 0.5 * length);
        }
        return next;
    }

    /** Rounding hides gains below about 1e-12; such steps are taken, they are at the end of convergence. */
    private static boolean isGood(double gained, double promised) {
        return gained > 1e-4 * promised || (Math.abs(promised) < 1e-10 && gained > -1e-10);
    }

    private @Nullable Local localAt(double[] x, double @Nullable [] values) {
        double[][] slopes = values == null ? null : problem.slopesAt(x);
        return values == null || slopes == null ? null : new Local(problem, x, values, slopes);
    }

    private double[] insideBounds(double[] x) {
        double[] inside = x.clone();
        double[] lower = problem.lower();
        double[] upper = problem.upper();
        for (int i = 0; i < x.length; i++) {
            inside[i] = Math.max(lower[i], Math.min(upper[i], x[i]));
        }
        return inside;
    }
}
