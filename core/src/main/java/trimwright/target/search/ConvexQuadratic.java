package trimwright.target.search;

import org.jspecify.annotations.Nullable;

/**
 * Minimum of 1/2 p'Gp + a'p where every row of N p >= b, G positive definite, by the dual method of Goldfarb and Idnani
 * (Mathematical Programming 27, 1983, 1-33; from memory): begin at the free minimum, take in the most broken row, drop
 * rows whose multiplier would turn negative. For few variables, so the small systems are solved anew at each step.
 */
final class ConvexQuadratic {
    private static final double BROKEN = 1e-11;
    private static final double PARALLEL = 1e-10;

    private final double[][] inverse;
    private final double[][] rows;
    private final double[] bounds;
    private final int n;

    private final double[] p;
    private final double[] u;
    private final int[] active;
    private int count;

    private ConvexQuadratic(double[][] inverse, double[] a, double[][] rows, double[] bounds) {
        this.inverse = inverse;
        this.rows = rows;
        this.bounds = bounds;
        n = a.length;
        p = Dense.times(inverse, a);
        for (int i = 0; i < n; i++) {
            p[i] = -p[i];
        }
        u = new double[n + 1];
        active = new int[n + 1];
    }

    /**
     * @param inverse of G
     * @param a gradient at p = 0
     * @param rows N
     * @param bounds b
     * @return the minimum with the multiplier of each row, or null where no p keeps all rows
     */
    static @Nullable Solution solve(double[][] inverse, double[] a, double[][] rows, double[] bounds) {
        ConvexQuadratic method = new ConvexQuadratic(inverse, a, rows, bounds);
        int most = 20 * (rows.length + method.n);
        for (int i = 0; i < most; i++) {
            int worst = method.mostBroken();
            if (worst < 0) {
                return method.solution();
            }
            if (!method.takeIn(worst)) {
                return null;
            }
        }
        return null;
    }

    private Solution solution() {
        double[] multipliers = new double[rows.length];
        for (int k = 0; k < count; k++) {
            multipliers[active[k]] = u[k];
        }
        return new Solution(p, multipliers);
    }

    private int mostBroken() {
        int worst = -1;
        double most = -BROKEN;
        for (int i = 0; i < rows.length; i++) {
            double slack = Dense.dot(rows[i], p) - bounds[i];
            if (slack < most && !isActive(i)) {
                most = slack;
                worst = i;
            }
        }
        return worst;
    }

    private boolean isActive(int row) {
        for (int k = 0; k < count; k++) {
            if (active[k] == row) {
                return true;
            }
        }
        return false;
    }

    /** Makes a broken row hold; false if that cannot be. */
    private boolean takeIn(int row) {
        double[] normal = rows[row];
        double ownMultiplier = 0;
        while (true) {
            double[] r = dualDirection(normal);
            double[] z = primalDirection(normal, r);
            double along = Dense.dot(z, normal);
            boolean free = count < n && along > PARALLEL * Dense.dot(normal, Dense.times(inverse, normal));
            double full = free ? (bounds[row] - Dense.dot(normal, p)) / along : Double.POSITIVE_INFINITY;
            int dropped = -1;
            double partial = Double.POSITIVE_INFINITY;
            for (int k = 0; k < count; k++) {
                if (r[k] > 0 && u[k] / r[k] < partial) {
                    partial = u[k] / r[k];
                    dropped = k;
                }
            }
            double t = Math.min(full, partial);
            if (Double.isInfinite(t)) {
                return false;
            }
            if (free) {
                for (int i = 0; i < n; i++) {
                    p[i] += t * z[i];
                }
            }
            for (int k = 0; k < count; k++) {
                u[k] = Math.max(0, u[k] - t * r[k]);
            }
            ownMultiplier += t;
            if (full <= partial) {
                active[count] = row;
                u[count] = ownMultiplier;
                count++;
                return true;
            }
            drop(dropped);
        }
    }

    private void drop(int place) {
        for (int k = place; k < count - 1; k++) {
            active[k] = active[k + 1];
            u[k] = u[k + 1];
        }
        count--;
    }

    /** r = (N' G^-1 N)^-1 N' G^-1 n over the active rows. */
    private double[] dualDirection(double[] normal) {
        if (count == 0) {
            return new double[0];
        }
        double[] image = Dense.times(inverse, normal);
        double[][] m = new double[count][count];
        double[] right = new double[count];
        for (int k = 0; k < count; k++) {
            double[] ownImage = Dense.times(inverse, rows[active[k]]);
            right[k] = Dense.dot(rows[active[k]], image);
            for (int l = 0; l < count; l++) {
                m[l][k] = Dense.dot(rows[active[l]], ownImage);
            }
        }
        return Dense.solve(m, right);
    }

    /** z = G^-1 (n - N r). */
    private double[] primalDirection(double[] normal, double[] r) {
        double[] rest = normal.clone();
        for (int k = 0; k < count; k++) {
            for (int i = 0; i < n; i++) {
                rest[i] -= r[k] * rows[active[k]][i];
            }
        }
        return Dense.times(inverse, rest);
    }

    /** The minimum and the multiplier of each row. */
    static final class Solution {
        final double[] p;
        final double[] multipliers;

        Solution(double[] p, double[] multipliers) {
            this.p = p;
            this.multipliers = multipliers;
        }
    }
}
