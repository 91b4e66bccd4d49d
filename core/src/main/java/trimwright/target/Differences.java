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
        double[] middle = functions.at(SailingState.ofScaled(x));
        double[][] up = new double[variables.size()][];
        if (middle == null) {
            return false;
        }
        double h2 = SECOND * SECOND;
        for (int a = 0; a < up.length; a++) {
            int i = variables.get(a).ordinal();
            double[] down = at(functions, x, i, -SECOND, i, 0);
            double[] above = at(functions, x, i, SECOND, i, 0);
            if (down == null || above == null) {
                return false;
            }
            up[a] = above;
            for (int f = 0; f < curvature.length; f++) {
                curvature[f][i][i] += (above[f] - 2 * middle[f] + down[f]) / h2;
            }
        }
        for (int a = 0; a < up.length; a++) {
            for (int b = 0; b < a; b++) {
                int i = variables.get(a).ordinal();
                int j = variables.get(b).ordinal();
                double[] both = at(functions, x, i, SECOND, j, SECOND);
                if (both == null) {
                    return false;
                }
                for (int f = 0; f < curvature.length; f++) {
                    double cross = (both[f] - up[a][f] - up[b][f] + middle[f]) / h2;
                    curvature[f][i][j] += cross;
                    curvature[f][j][i] += cross;
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
