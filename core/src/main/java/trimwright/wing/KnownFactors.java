package trimwright.wing;

import java.util.ArrayList;
import java.util.List;

/**
 * Steps toward a root with the factors of the derivatives at some place nearby, corrected by what each step shows of the
 * derivatives on the way: Broyden's method in the form that keeps the steps and no matrix.
 *
 * <p>Source: BROYDEN-1965.
 */
final class KnownFactors {
    /** Share of the sum of squared errors below which a step was worth it: one that leaves more costs more than new factors. Chosen. */
    static final double QUICK = 0.01;

    private final LuFactors lu;
    private final List<double[]> steps = new ArrayList<>();
    private final List<Double> squares = new ArrayList<>();

    KnownFactors(LuFactors lu) {
        this.lu = lu;
    }

    /** What to take away at a place with these errors, provided that all steps before were taken whole. */
    double[] step(double[] error) {
        double[] step = error.clone();
        lu.solve(step);
        int taken = steps.size();
        for (int k = 0; k < taken; k++) {
            double share = dot(steps.get(k), step) / squares.get(k);
            if (k + 1 < taken) {
                addScaled(steps.get(k + 1), share, step);
            } else {
                scale(step, 1 / (1 - share));
            }
        }
        steps.add(step);
        squares.add(dot(step, step));
        return step;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static void addScaled(double[] from, double factor, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] += from[i] * factor;
        }
    }

    private static void scale(double[] values, double factor) {
        for (int i = 0; i < values.length; i++) {
            values[i] *= factor;
        }
    }
}
