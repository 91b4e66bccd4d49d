package trimwright.target.search;

import java.util.ArrayList;
import java.util.List;

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

    /** Slope of f - lambda c - mu g. */
    double[] lagrangianSlope(Multipliers multipliers) {
        double[] sum = slopes[0].clone();
        for (int i = 0; i < equations + limits; i++) {
            double weight = i < equations ? multipliers.equations[i] : multipliers.limits[i - equations];
            if (weight != 0) {
                double[] slope = slopes[1 + i];
                for (int j = 0; j < sum.length; j++) {
                    sum[j] -= weight * slope[j];
                }
            }
        }
        return sum;
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

    /**
     * Second-order correction: the shortest way from where the equations and the limits in force are missed at a trial
     * point, bounds in force kept.
     */
    double[] wayBack(Step step, double[] trialValues) {
        List<double[]> rows = new ArrayList<>(List.of(equationSlopes()));
        double[] missed = new double[x.length];
        System.arraycopy(trialValues, 1, missed, 0, equations);
        for (int i = 0; i < limits && rows.size() < x.length - 1; i++) {
            double value = trialValues[1 + equations + i];
            if (step.multipliers.limits[i] > 0 || value < 0) {
                missed[rows.size()] = value;
                rows.add(limitSlope(i));
            }
        }
        for (int i = 0; i < x.length && rows.size() < x.length - 1; i++) {
            if (step.multipliers.lower[i] > 0 || step.multipliers.upper[i] > 0) {
                double[] unit = new double[x.length];
                unit[i] = 1;
                rows.add(unit);
            }
        }
        return new NullSpace(rows.toArray(new double[0][]), x.length).shortestStep(missed);
    }
}
