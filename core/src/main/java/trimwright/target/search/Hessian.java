package trimwright.target.search;

import java.util.Arrays;

/**
 * Second derivatives of the Lagrangian: those of all functions from one place, weighed by the multipliers of the moment, and
 * what the slopes met on the way have added to them since (symmetric rank-one update; Nocedal and Wright, chapter 6, from memory).
 */
final class Hessian {
    /** An update is left out where it would be larger than the step's by one over this (-); as in the source. */
    private static final double SKIP = 1e-6;

    private final int equations;
    private final double[][] added;
    private Curvature curvature;

    Hessian(Curvature curvature, int equations, int variables) {
        this.curvature = curvature;
        this.equations = equations;
        added = new double[variables][variables];
    }

    /** Takes those of another place; what was added belonged to the last one. */
    void moveTo(Curvature other) {
        if (!curvature.equals(other)) {
            curvature = other;
            for (double[] row : added) {
                Arrays.fill(row, 0);
            }
        }
    }

    /** Second derivatives of f - lambda c - mu g. */
    double[][] ofLagrangian(Multipliers multipliers) {
        double[] weights = new double[1 + equations + multipliers.limits.length];
        weights[0] = 1;
        for (int i = 0; i < equations; i++) {
            weights[1 + i] = -multipliers.equations[i];
        }
        for (int i = 0; i < multipliers.limits.length; i++) {
            weights[1 + equations + i] = -multipliers.limits[i];
        }
        double[][] h = new double[added.length][];
        for (int i = 0; i < h.length; i++) {
            h[i] = added[i].clone();
        }
        curvature.add(weights, h);
        return h;
    }

    /** Learns from the slopes at both ends of a step. */
    void learn(Local from, Local to, Multipliers multipliers) {
        double[] step = Dense.plus(to.x, -1, from.x);
        double[] rest = Dense.plus(
                Dense.plus(to.lagrangianSlope(multipliers), -1, from.lagrangianSlope(multipliers)),
                -1,
                Dense.times(ofLagrangian(multipliers), step));
        double along = Dense.dot(rest, step);
        double sizes = Math.sqrt(Dense.dot(rest, rest) * Dense.dot(step, step));
        if (!(Math.abs(along) > SKIP * sizes) || sizes == 0) {
            return;
        }
        for (int i = 0; i < rest.length; i++) {
            for (int j = 0; j < rest.length; j++) {
                added[i][j] += rest[i] * rest[j] / along;
            }
        }
    }
}
