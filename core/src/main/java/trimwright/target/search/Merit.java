package trimwright.target.search;

/**
 * f plus a price for each broken equation and limit: what a step must lower. Each price follows its own multiplier, so
 * that a cheap limit does not hold back a step along the others.
 */
final class Merit {
    /** Price over multiplier (-); above 1, so that breaking never pays. */
    private static final double MARK_UP = 2;

    /** Least price of anything broken; chosen. */
    private static final double LEAST = 1e-2;

    /** Largest price of a broken equation or limit; chosen, above any real multiplier. */
    private static final double MOST = 1e3;

    private final double[] prices;
    private final int equations;

    Merit(Problem problem) {
        equations = problem.equations();
        prices = new double[equations + problem.limits()];
    }

    /** Prices rise at once with the multipliers and fall by halves. */
    void follow(Multipliers multipliers) {
        for (int i = 0; i < prices.length; i++) {
            double multiplier = i < equations ? Math.abs(multipliers.equations[i]) : multipliers.limits[i - equations];
            prices[i] = Math.min(MOST, Math.max(LEAST, Math.max(0.5 * prices[i], MARK_UP * multiplier)));
        }
    }

    double of(double[] values) {
        double sum = values[0];
        for (int i = 0; i < prices.length; i++) {
            sum += prices[i] * broken(i, values[1 + i]);
        }
        return sum;
    }

    /** By how much a step promises to lower the merit, equations and limits taken as straight. */
    double promised(Local local, Step step) {
        double promised = -step.modelChange;
        for (int i = 0; i < prices.length; i++) {
            double now = local.values[1 + i];
            double then = now + Dense.dot(local.slopes[1 + i], step.p);
            promised += prices[i] * (broken(i, now) - broken(i, then));
        }
        return promised;
    }

    private double broken(int i, double value) {
        return i < equations ? Math.abs(value) : Math.max(0, -value);
    }
}
