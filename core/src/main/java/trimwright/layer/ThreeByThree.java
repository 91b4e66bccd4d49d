package trimwright.layer;

/** Three linear equations. */
final class ThreeByThree {
    private ThreeByThree() {}

    /** Solution of rows {a, b, c, right side}; not numbers if there is none. Rows are overwritten. */
    static double[] solve(double[][] rows) {
        for (int k = 0; k < 3; k++) {
            int best = k;
            for (int i = k + 1; i < 3; i++) {
                best = Math.abs(rows[i][k]) > Math.abs(rows[best][k]) ? i : best;
            }
            double[] swap = rows[k];
            rows[k] = rows[best];
            rows[best] = swap;
            for (int i = 0; i < 3; i++) {
                if (i != k) {
                    double factor = rows[i][k] / rows[k][k];
                    for (int j = k; j < 4; j++) {
                        rows[i][j] -= factor * rows[k][j];
                    }
                }
            }
        }
        return new double[] {rows[0][3] / rows[0][0], rows[1][3] / rows[1][1], rows[2][3] / rows[2][2]};
    }
}
