package trimwright.target.search;

/** Second derivatives of all functions, kept from one place and weighed by the multipliers of the moment. */
final class Hessian {
    private final double[][][] curvature;
    private final int equations;

    Hessian(double[][][] curvature, int equations) {
        this.curvature = curvature;
        this.equations = equations;
    }

    /** Second derivatives of f - lambda c - mu g. */
    double[][] ofLagrangian(Multipliers multipliers) {
        int n = curvature[0].length;
        double[][] h = new double[n][n];
        for (int k = 0; k < curvature.length; k++) {
            double weight = weight(k, multipliers);
            if (weight != 0) {
                for (int i = 0; i < n; i++) {
                    for (int j = 0; j < n; j++) {
                        h[i][j] += weight * curvature[k][i][j];
                    }
                }
            }
        }
        return h;
    }

    private double weight(int function, Multipliers multipliers) {
        if (function == 0) {
            return 1;
        }
        return function <= equations
                ? -multipliers.equations[function - 1]
                : -multipliers.limits[function - 1 - equations];
    }
}
