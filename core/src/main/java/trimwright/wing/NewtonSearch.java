package trimwright.wing;

import org.jspecify.annotations.Nullable;

/**
 * Newton's method for the strips' circulations, after Phillips and Snyder (J. Aircraft 37(4), 2000), with halved steps
 * where a full one does not help and, where none does, pseudo-time steps that grow back to Newton's. While factors known from
 * before serve, {@link KnownFactors} steps take the place of Newton's: each costs less than half.
 */
final class NewtonSearch {
    /** Steps after which a search from one start is given up. */
    static final int MOST_ITERATIONS = 200;

    /** Error in circulation over mean chord times speed at which the equations count as solved. */
    private static final double TOLERANCE = 1e-11;

    /** Pseudo-time steps, in units of the circulation's own settling: the first, and the one from which Newton resumes. */
    private static final double FIRST_TIME = 0.1;

    private static final double LAST_TIME = 1e3;

    /** Error, in the same measure, from which Newton's method resumes too, chosen: it then closes in on the root at hand. */
    private static final double NEAR = 1e-3;

    private final StripFlow flow;
    private final double scale;
    private final double[] before;
    private double merit;
    private int iterations;

    private NewtonSearch(StripFlow flow, double scale) {
        this.flow = flow;
        this.scale = scale;
        before = new double[flow.n];
    }

    /** Iterations used, or -1. */
    static int from(StripFlow flow, double scale) {
        return new NewtonSearch(flow, scale).run();
    }

    private int run() {
        merit = flow.update();
        if (flow.factors != null) {
            follow(new KnownFactors(flow.factors));
        }
        // Pseudo-time step: infinite is Newton's step; finite ones follow the circulation as it would settle by itself.
        double time = Double.POSITIVE_INFINITY;
        while (iterations < MOST_ITERATIONS) {
            if (isSolved()) {
                return iterations;
            }
            iterations++;
            System.arraycopy(flow.gamma, 0, before, 0, flow.n);
            LuFactors lu = factors(time);
            if (lu == null) {
                return -1;
            }
            KnownFactors known = new KnownFactors(lu);
            double[] step = known.step(flow.error);
            double next = take(step, 1);
            if (time == Double.POSITIVE_INFINITY) {
                for (double omega = 0.5; omega > 0.1 && !(next < 0.9 * merit); omega *= 0.5) {
                    next = take(step, omega);
                }
                if (!(next < 0.9 * merit)) {
                    System.arraycopy(before, 0, flow.gamma, 0, flow.n);
                    next = flow.update();
                    time = FIRST_TIME;
                }
            } else {
                time *= Math.max(0.5, Math.min(1.25, Math.sqrt(merit / next)));
                boolean near = largest(flow.error) < NEAR * scale;
                time = near || time > LAST_TIME ? Double.POSITIVE_INFINITY : time;
            }
            boolean quick = next < KnownFactors.QUICK * merit;
            merit = next;
            if (quick && flow.factors == lu) {
                follow(known);
            }
        }
        return isSolved() ? iterations : -1;
    }

    private boolean isSolved() {
        return largest(flow.error) <= TOLERANCE * scale;
    }

    /** Steps with factors at hand, for as long as each helps much. */
    private void follow(KnownFactors known) {
        boolean quick = true;
        while (quick && !isSolved() && iterations < MOST_ITERATIONS) {
            iterations++;
            System.arraycopy(flow.gamma, 0, before, 0, flow.n);
            double next = take(known.step(flow.error), 1);
            quick = next < KnownFactors.QUICK * merit;
            if (!(next < merit)) {
                System.arraycopy(before, 0, flow.gamma, 0, flow.n);
                next = flow.update();
            }
            merit = next;
        }
    }

    /** Of the derivatives at the present circulations; those of Newton's own step are kept with the flow. Null if singular. */
    private @Nullable LuFactors factors(double time) {
        LuFactors lu = new LuFactors(flow.n);
        flow.jacobian(lu.columns());
        for (int i = 0; i < flow.n; i++) {
            lu.columns()[i][i] += 1 / time;
        }
        if (!lu.factor()) {
            return null;
        }
        if (time == Double.POSITIVE_INFINITY) {
            flow.factors = lu;
        }
        return lu;
    }

    private double take(double[] step, double omega) {
        for (int i = 0; i < flow.n; i++) {
            flow.gamma[i] = before[i] - omega * step[i];
        }
        return flow.update();
    }

    // NaN counts as larger than anything.
    static double largest(double[] values) {
        double largest = 0;
        for (double value : values) {
            double size = Math.abs(value);
            if (!(size <= largest)) {
                largest = size;
            }
        }
        return largest;
    }
}
