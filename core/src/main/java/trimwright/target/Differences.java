package trimwright.target;

import java.util.List;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;

/** Second derivatives of {@link Functions} by scaled variables, from differences of their exact slopes. */
final class Differences {
    /** Step of second derivatives (scaled): they only guide the search, three digits serve. */
    private static final double SECOND = 1e-3;

    private Differences() {}

    /** Adds d2 row / dx dx to {@code curvature[function][variable][variable]}; false where the model has no answer. */
    static boolean addCurvature(Functions functions, double[] x, double[][][] curvature) {
        List<Variable> variables = functions.variables();
        boolean[] none = new boolean[x.length];
        double[][] middle = new double[curvature.length][x.length];
        if (!functions.addSlopes(SailingState.ofScaled(x), none, middle)) {
            return false;
        }
        for (Variable variable : variables) {
            int i = variable.ordinal();
            double[] moved = x.clone();
            moved[i] += SECOND;
            double[][] beside = new double[curvature.length][x.length];
            if (!functions.addSlopes(SailingState.ofScaled(moved), none, beside)) {
                return false;
            }
            for (int f = 0; f < curvature.length; f++) {
                for (int j = 0; j < x.length; j++) {
                    double half = (beside[f][j] - middle[f][j]) / (2 * SECOND);
                    curvature[f][i][j] += half;
                    curvature[f][j][i] += half;
                }
            }
        }
        return true;
    }
}
