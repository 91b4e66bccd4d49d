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
    private final Deque<Curvature> known = new ArrayDeque<>();

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

    /** Adds second derivatives at x or at a place nearby; false where the model has no answer. */
    boolean addCurvature(double[] x, double[][][] sum) {
        double[][][] own = near(x);
        if (own == null) {
            own = new double[sum.length][x.length][x.length];
            if (!Differences.addCurvature(functions, x, own)) {
                return false;
            }
            known.addFirst(new Curvature(x.clone(), own));
            if (known.size() > KEPT) {
                known.removeLast();
            }
        }
        for (int f = 0; f < sum.length; f++) {
            for (int i = 0; i < x.length; i++) {
                for (int j = 0; j < x.length; j++) {
                    sum[f][i][j] += own[f][i][j];
                }
            }
        }
        return true;
    }

    /** Second derivatives at the nearest place that is near enough, or null. */
    private double @Nullable [][][] near(double[] x) {
        double[][][] nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Curvature kept : known) {
            double distance = distance(kept.place, x);
            if (distance <= near && distance < least) {
                least = distance;
                nearest = kept.second;
            }
        }
        return nearest;
    }

    private static double distance(double[] place, double[] x) {
        double largest = 0;
        for (int i = 0; i < x.length; i++) {
            largest = Math.max(largest, Math.abs(x[i] - place[i]));
        }
        return largest;
    }

    private record Curvature(double[] place, double[][][] second) {}
}
