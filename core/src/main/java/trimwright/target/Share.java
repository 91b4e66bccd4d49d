package trimwright.target;

import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;
import trimwright.platform.SailingState;

/** A share of a problem's functions with its last second derivatives, which serve as long as the point is near theirs. */
final class Share {
    /**
     * Places whose second derivatives are kept; chosen: a search for the ends of bands goes to and fro between the best state and
     * six ends.
     */
    private static final int KEPT = 8;

    private final Functions functions;
    private final double near;
    private final Deque<Place> known = new ArrayDeque<>();

    /** @param near second derivatives are taken over from a point no farther away than this in any scaled variable */
    Share(Functions functions, double near) {
        this.functions = functions;
        this.near = near;
    }

    double @Nullable [] valuesAt(double[] x) {
        return functions.at(SailingState.ofScaled(x));
    }

    boolean addSlopes(double[] x, boolean[] fixed, double[][] slopes) {
        return functions.addSlopes(SailingState.ofScaled(x), fixed, slopes);
    }

    /** Second derivatives at x or at a place nearby; null where the model has no answer. */
    @Nullable
    Place curvatureNear(double[] x) {
        Place nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Place place : known) {
            double distance = place.distance(x);
            if (distance <= near && distance < least) {
                least = distance;
                nearest = place;
            }
        }
        if (nearest != null) {
            return nearest;
        }
        double[][][] second = new double[TrimProblem.ROW][x.length][x.length];
        if (!Differences.addCurvature(functions, x, second)) {
            return null;
        }
        Place made = new Place(x.clone(), second);
        known.addFirst(made);
        if (known.size() > KEPT) {
            known.removeLast();
        }
        return made;
    }

    /** Second derivatives of the share's functions at one place. */
    static final class Place {
        private final double[] x;
        private final double[][][] second;

        Place(double[] x, double[][][] second) {
            this.x = x;
            this.second = second;
        }

        private double distance(double[] other) {
            double largest = 0;
            for (int i = 0; i < x.length; i++) {
                largest = Math.max(largest, Math.abs(other[i] - x[i]));
            }
            return largest;
        }

        void add(double[] weights, double[][] sum) {
            for (int f = 0; f < weights.length; f++) {
                if (weights[f] != 0) {
                    for (int i = 0; i < sum.length; i++) {
                        double[] row = second[f][i];
                        double[] to = sum[i];
                        for (int j = 0; j < row.length; j++) {
                            to[j] += weights[f] * row[j];
                        }
                    }
                }
            }
        }
    }
}
