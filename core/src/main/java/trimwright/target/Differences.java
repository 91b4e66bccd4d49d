package trimwright.target;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;

/** First and second derivatives of {@link Functions} by scaled variables, from differences. */
final class Differences {
    /** Step of first derivatives (scaled): error about 1e-9 by cut-off, 1e-9 by the wing's last digits. */
    private static final double FIRST = 1e-4;

    /** Step of second derivatives (scaled): they only guide the search, three digits serve. */
    private static final double SECOND = 1e-3;

    private Differences() {}

    /** Adds d row / d x of the free variables to {@code slopes[function][variable]}; false where the model has no answer. */
    static boolean addSlopes(Functions functions, double[] x, boolean[] fixed, double[][] slopes) {
        for (Variable variable : functions.variables()) {
            int i = variable.ordinal();
            if (fixed[i]) {
                continue;
            }
            double[] up = at(functions, x, i, FIRST, i, 0);
            double[] down = at(functions, x, i, -FIRST, i, 0);
            if (up == null || down == null) {
                return false;
            }
            for (int f = 0; f < slopes.length; f++) {
                slopes[f][i] += (up[f] - down[f]) / (2 * FIRST);
            }
        }
        return true;
    }

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

    private static double @Nullable [] at(Functions functions, double[] x, int i, double hi, int j, double hj) {
        double[] moved = x.clone();
        moved[i] += hi;
        moved[j] += hj;
        return functions.at(SailingState.ofScaled(moved));
    }
}
