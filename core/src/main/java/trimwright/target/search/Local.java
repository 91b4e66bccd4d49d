package trimwright.target.search;

/** Values and slopes at one point, cut into objective, equations (fixed variables among them) and limits. */
final class Local {
    final double[] x;
    final double[] values;
    final double[][] slopes;
    private final int equations;
    private final int limits;
    private final double[] lower;
    private final double[] upper;

    Local(Problem problem, double[] x, double[] values, double[][] slopes) {
        this.x = x;
        this.values = values;
        this.slopes = slopes;
        equations = problem.equations();
        limits = problem.limits();
        lower = problem.lower();
        upper = problem.upper();
    }

    double[] objectiveSlope() {
        return slopes[0];
    }

    /** Jacobian of the equations, a unit row added for each fixed variable. */
    double[][] equationSlopes() {
        int fixed = fixedCount();
        double[][] rows = new double[equations + fixed][];
        System.arraycopy(slopes, 1, rows, 0, equations);
        int next = equations;
        for (int i = 0; i < x.length; i++) {
            if (lower[i] == upper[i]) {
                double[] unit = new double[x.length];
                unit[i] = 1;
                rows[next++] = unit;
            }
        }
        return rows;
    }

    /** What the equations miss, fixed variables included. */
    double[] equationValues() {
        double[] c = new double[equations + fixedCount()];
        System.arraycopy(values, 1, c, 0, equations);
        int next = equations;
        for (int i = 0; i < x.length; i++) {
            if (lower[i] == upper[i]) {
                c[next++] = x[i] - lower[i];
            }
        }
        return c;
    }

    private int fixedCount() {
        int fixed = 0;
        for (int i = 0; i < x.length; i++) {
            fixed += lower[i] == upper[i] ? 1 : 0;
        }
        return fixed;
    }

    double limit(int i) {
        return values[1 + equations + i];
    }

    double[] limitSlope(int i) {
        return slopes[1 + equations + i];
    }

    int limits() {
        return limits;
    }

    int variables() {
        return x.length;
    }

    double roomBelow(int i) {
        return lower[i] - x[i];
    }

    double roomAbove(int i) {
        return upper[i] - x[i];
    }

    boolean isFixed(int i) {
        return lower[i] == upper[i];
    }

    static double brokenSum(Problem problem, double[] values) {
        double sum = 0;
        for (int i = 0; i < problem.equations(); i++) {
            sum += Math.abs(values[1 + i]);
        }
        for (int i = 0; i < problem.limits(); i++) {
            sum += Math.max(0, -values[1 + problem.equations() + i]);
        }
        return sum;
    }

    static double brokenMost(Problem problem, double[] values) {
        double most = 0;
        for (int i = 0; i < problem.equations(); i++) {
            most = Math.max(most, Math.abs(values[1 + i]));
        }
        for (int i = 0; i < problem.limits(); i++) {
            most = Math.max(most, -values[1 + problem.equations() + i]);
        }
        return most;
    }

    /** Broken sum after a step, equations and limits taken as straight. */
    double brokenSumAfter(double[] p) {
        double sum = 0;
        for (int i = 0; i < equations; i++) {
            sum += Math.abs(values[1 + i] + Dense.dot(slopes[1 + i], p));
        }
        for (int i = 0; i < limits; i++) {
            sum += Math.max(0, -(limit(i) + Dense.dot(limitSlope(i), p)));
        }
        return sum;
    }
}
