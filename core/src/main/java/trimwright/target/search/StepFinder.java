package trimwright.target.search;

import java.util.Arrays;

/**
 * The best step of the quadratic model inside a box: first the shortest step that makes the straightened equations hold,
 * then, in their null space, the minimum of the model under the straightened limits.
 */
final class StepFinder {
    /** Share of the box that the equations may use; chosen, so that the null space keeps room. */
    private static final double EQUATION_SHARE = 0.8;

    /** Price of breaking a limit where the box has no room to keep it; chosen, far above any multiplier. */
    private static final double PRICE = 1e3;

    private final Local local;
    private final double[][] hessian;
    private final double radius;
    private final NullSpace space;
    private final double[] range;
    private final double[][] z;

    StepFinder(Local local, double[][] hessian, double radius) {
        this.local = local;
        this.hessian = hessian;
        this.radius = radius;
        space = new NullSpace(local.equationSlopes(), local.variables());
        double[] shortest = space.shortestStep(local.equationValues());
        double length = Dense.largest(shortest);
        double scale = length > EQUATION_SHARE * radius ? EQUATION_SHARE * radius / length : 1;
        range = new double[shortest.length];
        for (int i = 0; i < range.length; i++) {
            range[i] = -scale * shortest[i];
        }
        z = space.basis();
    }

    Step find() {
        int limits = local.limits();
        int n = local.variables();
        int free = z.length;
        double[][] rows = new double[limits + 2 * n][];
        double[] bounds = new double[rows.length];
        for (int i = 0; i < limits; i++) {
            rows[i] = inNullSpace(local.limitSlope(i));
            bounds[i] = -local.limit(i) - Dense.dot(local.limitSlope(i), range);
        }
        for (int i = 0; i < n; i++) {
            double[] row = new double[free];
            double[] opposite = new double[free];
            if (!local.isFixed(i)) {
                for (int k = 0; k < free; k++) {
                    row[k] = z[k][i];
                    opposite[k] = -z[k][i];
                }
            }
            rows[limits + i] = row;
            rows[limits + n + i] = opposite;
            boolean fixed = local.isFixed(i);
            bounds[limits + i] = fixed ? -1 : Math.max(local.roomBelow(i), -radius) - range[i];
            bounds[limits + n + i] = fixed ? -1 : -(Math.min(local.roomAbove(i), radius) - range[i]);
        }
        double[] gradient = inNullSpace(Dense.plus(local.objectiveSlope(), 1, Dense.times(hessian, range)));
        double[][] inverse = PositiveInverse.of(reducedHessian());
        ConvexQuadratic.Solution solution = ConvexQuadratic.solve(inverse, gradient, rows, bounds);
        if (solution == null) {
            solution = elastic(inverse, gradient, rows, bounds);
        }
        return stepOf(solution);
    }

    private Step stepOf(ConvexQuadratic.Solution solution) {
        int n = local.variables();
        double[] p = range.clone();
        for (int k = 0; k < z.length; k++) {
            p = Dense.plus(p, solution.p[k], z[k]);
        }
        for (int i = 0; i < n; i++) {
            p[i] = Math.max(local.roomBelow(i), Math.min(local.roomAbove(i), p[i]));
        }
        return new Step(p, multipliersOf(p, solution.multipliers), modelChange(p));
    }

    private Multipliers multipliersOf(double[] p, double[] rowMultipliers) {
        int limits = local.limits();
        int n = local.variables();
        double[] ofLimits = Arrays.copyOf(rowMultipliers, limits);
        double[] ofLower = new double[n];
        double[] ofUpper = new double[n];
        double[] rest = Dense.plus(local.objectiveSlope(), 1, Dense.times(hessian, p));
        for (int i = 0; i < limits; i++) {
            rest = Dense.plus(rest, -ofLimits[i], local.limitSlope(i));
        }
        for (int i = 0; i < n; i++) {
            double low = rowMultipliers[limits + i];
            double high = rowMultipliers[limits + n + i];
            ofLower[i] = local.roomBelow(i) >= -radius ? low : 0;
            ofUpper[i] = local.roomAbove(i) <= radius ? high : 0;
            rest[i] += high - low;
        }
        double[] ofEquations = Arrays.copyOf(space.multipliers(rest), local.equationValues().length);
        return new Multipliers(ofEquations, ofLimits, ofLower, ofUpper);
    }

    private double modelChange(double[] p) {
        return Dense.dot(local.objectiveSlope(), p) + 0.5 * Dense.dot(p, Dense.times(hessian, p));
    }

    /** One variable more lets all limits give way together, at a price. */
    private ConvexQuadratic.Solution elastic(double[][] inverse, double[] gradient, double[][] rows, double[] bounds) {
        int free = gradient.length;
        double[][] widerInverse = new double[free + 1][free + 1];
        for (int i = 0; i < free; i++) {
            System.arraycopy(inverse[i], 0, widerInverse[i], 0, free);
        }
        widerInverse[free][free] = 1 / PRICE;
        double[] widerGradient = Arrays.copyOf(gradient, free + 1);
        widerGradient[free] = PRICE;
        double[][] widerRows = new double[rows.length + 1][];
        double[] widerBounds = Arrays.copyOf(bounds, rows.length + 1);
        for (int i = 0; i < rows.length; i++) {
            widerRows[i] = Arrays.copyOf(rows[i], free + 1);
            widerRows[i][free] = Math.max(0, bounds[i]);
        }
        widerRows[rows.length] = new double[free + 1];
        widerRows[rows.length][free] = 1;
        ConvexQuadratic.Solution wider = ConvexQuadratic.solve(widerInverse, widerGradient, widerRows, widerBounds);
        if (wider == null) {
            return new ConvexQuadratic.Solution(new double[free], new double[rows.length]);
        }
        return new ConvexQuadratic.Solution(
                Arrays.copyOf(wider.p, free), Arrays.copyOf(wider.multipliers, rows.length));
    }

    private double[] inNullSpace(double[] v) {
        return Dense.times(z, v);
    }

    private double[][] reducedHessian() {
        double[][] reduced = new double[z.length][];
        for (int i = 0; i < z.length; i++) {
            reduced[i] = inNullSpace(Dense.times(hessian, z[i]));
        }
        for (int i = 0; i < z.length; i++) {
            for (int j = 0; j < i; j++) {
                double mean = 0.5 * (reduced[i][j] + reduced[j][i]);
                reduced[i][j] = mean;
                reduced[j][i] = mean;
            }
        }
        return reduced;
    }
}
