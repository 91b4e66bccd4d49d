package trimwright.setup;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Points and weights for means over a normal variable of mean 0 and deviation 1.
 *
 * @param z the points, rising
 * @param weight theirs, sum 1
 */
record NormalNodes(List<Double> z, List<Double> weight) {
    NormalNodes {
        z = List.copyOf(z);
        weight = List.copyOf(weight);
    }

    int count() {
        return z.size();
    }

    /** Gauss and Hermite's rule: few points, for what changes smoothly. */
    static NormalNodes gaussHermite(int count) {
        GaussIntegrator rule = new GaussIntegratorFactory().hermite(count);
        List<Double> z = new ArrayList<>();
        List<Double> weight = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            z.add(StrictMath.sqrt(2) * rule.getPoint(i));
            weight.add(rule.getWeight(i) / StrictMath.sqrt(Math.PI));
        }
        return new NormalNodes(z, weight);
    }

    /** Equal steps to that many deviations either way: for what has kinks, as speed has where foiling begins. */
    static NormalNodes even(double reach, double step) {
        int half = (int) Math.round(reach / step);
        double sum = 0;
        for (int i = -half; i <= half; i++) {
            sum += density(i * step);
        }
        List<Double> z = new ArrayList<>();
        List<Double> weight = new ArrayList<>();
        for (int i = -half; i <= half; i++) {
            z.add(i * step);
            weight.add(density(i * step) / sum);
        }
        return new NormalNodes(z, weight);
    }

    private static double density(double z) {
        return StrictMath.exp(-0.5 * z * z);
    }
}
