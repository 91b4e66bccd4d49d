package trimwright.target.search;

/** Multipliers of equations, limits and bounds; those of limits and bounds are never negative. */
final class Multipliers {
    final double[] equations;
    final double[] limits;
    final double[] lower;
    final double[] upper;

    Multipliers(double[] equations, double[] limits, double[] lower, double[] upper) {
        this.equations = equations;
        this.limits = limits;
        this.lower = lower;
        this.upper = upper;
    }

    static Multipliers zero(Problem problem) {
        int n = problem.lower().length;
        return new Multipliers(
                new double[problem.equations()], new double[problem.limits()], new double[n], new double[n]);
    }

    double largest() {
        double largest = 0;
        for (double[] row : new double[][] {equations, limits, lower, upper}) {
            for (double value : row) {
                largest = Math.max(largest, Math.abs(value));
            }
        }
        return largest;
    }
}
