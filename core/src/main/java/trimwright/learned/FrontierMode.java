package trimwright.learned;

import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * The most probable weights of a frontier for given scales of noise and loss, their covariance, and how well these scales
 * explain the whole (Laplace's approximation; Rasmussen and Williams 2006, section 3.4). Weights are standard normal beforehand.
 *
 * @param frontier with these scales
 * @param weights by column of the design
 * @param covariance of the weights
 * @param evidence logarithm of the probability of all that was seen
 */
record FrontierMode(Frontier frontier, double[] weights, RealMatrix covariance, double evidence) {
    private static final int MOST_STEPS = 40;
    private static final double CLOSE = 1e-9;

    /**
     * @param rows of the design, one an observation
     * @param seen observations
     * @param counts what each counts (-), 1 for one that is independent of all others
     * @param start weights to begin at
     */
    static FrontierMode of(double[][] rows, double[] seen, double[] counts, Frontier frontier, double[] start) {
        double[] weights = start.clone();
        double best = goal(rows, seen, counts, frontier, weights);
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] off = off(rows, seen, weights);
            double[] way = new CholeskyDecomposition(precision(rows, off, counts, frontier))
                    .getSolver()
                    .solve(new ArrayRealVector(uphill(rows, off, counts, frontier, weights)))
                    .toArray();
            double share = 1;
            double gained = Double.NEGATIVE_INFINITY;
            double[] next = weights;
            while (share > 1e-6) {
                next = moved(weights, way, share);
                gained = goal(rows, seen, counts, frontier, next) - best;
                if (gained >= 0) {
                    break;
                }
                share /= 2;
            }
            if (gained < 0) {
                break;
            }
            weights = next;
            best += gained;
            if (gained < CLOSE) {
                break;
            }
        }
        RealMatrix precision = precision(rows, off(rows, seen, weights), counts, frontier);
        CholeskyDecomposition root = new CholeskyDecomposition(precision);
        double halfLog = 0;
        for (int i = 0; i < weights.length; i++) {
            halfLog += StrictMath.log(root.getL().getEntry(i, i));
        }
        return new FrontierMode(frontier, weights, root.getSolver().getInverse(), best - halfLog);
    }

    /** The same with scales that are so probable beforehand. */
    FrontierMode heldAsProbableAs(double prior) {
        return new FrontierMode(frontier, weights, covariance, evidence + StrictMath.log(prior));
    }

    /** Covariance of the weights, about the same values, where observations count otherwise. */
    RealMatrix covarianceOf(double[][] rows, double[] seen, double[] counts) {
        return new CholeskyDecomposition(precision(rows, off(rows, seen, weights), counts, frontier))
                .getSolver()
                .getInverse();
    }

    private static double goal(double[][] rows, double[] seen, double[] counts, Frontier frontier, double[] weights) {
        double sum = 0;
        double[] off = off(rows, seen, weights);
        for (int i = 0; i < off.length; i++) {
            sum += counts[i] * frontier.log(off[i]);
        }
        for (double weight : weights) {
            sum -= 0.5 * weight * weight;
        }
        return sum;
    }

    static double[] off(double[][] rows, double[] seen, double[] weights) {
        double[] off = new double[seen.length];
        for (int i = 0; i < off.length; i++) {
            off[i] = seen[i] - dot(rows[i], weights);
        }
        return off;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double[] uphill(
            double[][] rows, double[] off, double[] counts, Frontier frontier, double[] weights) {
        double[] uphill = new double[weights.length];
        for (int j = 0; j < weights.length; j++) {
            uphill[j] = -weights[j];
        }
        for (int i = 0; i < off.length; i++) {
            double pull = -counts[i] * frontier.slope(off[i]);
            for (int j = 0; j < weights.length; j++) {
                uphill[j] += pull * rows[i][j];
            }
        }
        return uphill;
    }

    private static RealMatrix precision(double[][] rows, double[] off, double[] counts, Frontier frontier) {
        int size = rows[0].length;
        double[][] sum = new double[size][size];
        for (int i = 0; i < off.length; i++) {
            double stiff = counts[i] * frontier.curvature(off[i]);
            double[] row = rows[i];
            for (int j = 0; j < size; j++) {
                double part = stiff * row[j];
                if (part != 0) {
                    for (int k = 0; k <= j; k++) {
                        sum[j][k] += part * row[k];
                    }
                }
            }
        }
        for (int j = 0; j < size; j++) {
            sum[j][j] += 1;
            for (int k = 0; k < j; k++) {
                sum[k][j] = sum[j][k];
            }
        }
        return MatrixUtils.createRealMatrix(sum);
    }

    private static double[] moved(double[] from, double[] way, double share) {
        double[] to = from.clone();
        for (int i = 0; i < to.length; i++) {
            to[i] += share * way[i];
        }
        return to;
    }
}
