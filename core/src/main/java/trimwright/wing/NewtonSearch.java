package trimwright.wing;

/**
 * Newton's method for the strips' circulations, after Phillips and Snyder (J. Aircraft 37(4), 2000), with halved steps
 * where a full one does not help and, where none does, pseudo-time steps that grow back to Newton's.
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

    private NewtonSearch() {}

    /** Iterations used, or -1. */
    static int from(StripFlow flow, double scale) {
        int n = flow.n;
        LuFactors lu = new LuFactors(n);
        double[] step = new double[n];
        double[] before = new double[n];
        double merit = flow.update();
        // Pseudo-time step: infinite is Newton's step; finite ones follow the circulation as it would settle by itself.
        double time = Double.POSITIVE_INFINITY;
        for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
            if (largest(flow.error) <= TOLERANCE * scale) {
                return iteration;
            }
            System.arraycopy(flow.gamma, 0, before, 0, n);
            flow.jacobian(lu.columns());
            for (int i = 0; i < n; i++) {
                lu.columns()[i][i] += 1 / time;
            }
            if (!lu.factor()) {
                return -1;
            }
            System.arraycopy(flow.error, 0, step, 0, n);
            lu.solve(step);
            double next = take(flow, before, step, 1);
            if (time == Double.POSITIVE_INFINITY) {
                for (double omega = 0.5; omega > 0.1 && !(next < 0.9 * merit); omega *= 0.5) {
                    next = take(flow, before, step, omega);
                }
                if (!(next < 0.9 * merit)) {
                    System.arraycopy(before, 0, flow.gamma, 0, n);
                    next = flow.update();
                    time = FIRST_TIME;
                }
            } else {
                time *= Math.max(0.5, Math.min(1.25, Math.sqrt(merit / next)));
                boolean near = largest(flow.error) < NEAR * scale;
                time = near || time > LAST_TIME ? Double.POSITIVE_INFINITY : time;
            }
            merit = next;
        }
        return -1;
    }

    private static double take(StripFlow flow, double[] before, double[] step, double omega) {
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
