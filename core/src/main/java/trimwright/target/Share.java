package trimwright.target;

import org.jspecify.annotations.Nullable;
import trimwright.platform.SailingState;

/** A share of a problem's functions with its last second derivatives, which serve as long as the point is near. */
final class Share {
    private final Functions functions;
    private final double near;
    private double @Nullable [] place;
    private double @Nullable [][][] curvature;

    /** @param near second derivatives are taken over from a point no farther away than this in any scaled variable */
    Share(Functions functions, double near) {
        this.functions = functions;
        this.near = near;
    }

    double @Nullable [] valuesAt(double[] x) {
        return functions.at(SailingState.ofScaled(x));
    }

    boolean addSlopes(double[] x, boolean[] fixed, double[][] slopes) {
        return Differences.addSlopes(functions, x, fixed, slopes);
    }

    /** Adds second derivatives at x or at a place nearby; false where the model has no answer. */
    boolean addCurvature(double[] x, double[][][] sum) {
        double[][][] own = curvature;
        if (own == null || isFar(x)) {
            own = new double[sum.length][x.length][x.length];
            if (!Differences.addCurvature(functions, x, own)) {
                return false;
            }
            curvature = own;
            place = x.clone();
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

    private boolean isFar(double[] x) {
        double[] from = place;
        for (int i = 0; from != null && i < x.length; i++) {
            if (Math.abs(x[i] - from[i]) > near) {
                return true;
            }
        }
        return from == null;
    }
}
