package trimwright.fleet;

/**
 * Normal equations of one stretch of time: boats' effects beside an effect of every moment, which is taken out by each moment's
 * mean, and one slope over the boats' winds. Sums add up, so stretches can be drawn again in any number.
 */
final class BlockSums {
    private final int boats;
    private final double[][] matrix;
    private final double[] right;
    private double weight;

    BlockSums(int boats) {
        this.boats = boats;
        matrix = new double[boats + 1][boats + 1];
        right = new double[boats + 1];
    }

    /** Takes in the values of a moment: as many as boats, of winds likewise. */
    void add(int[] who, double[] values, double[] winds) {
        int n = who.length;
        double mean = 0;
        double meanWind = 0;
        for (int i = 0; i < n; i++) {
            mean += values[i] / n;
            meanWind += winds[i] / n;
        }
        for (int i = 0; i < n; i++) {
            int b = who[i];
            for (int k = 0; k < n; k++) {
                matrix[b][who[k]] -= 1.0 / n;
            }
            matrix[b][b] += 1;
            double wind = winds[i] - meanWind;
            double value = values[i] - mean;
            right[b] += value;
            matrix[b][boats] += wind;
            matrix[boats][b] += wind;
            matrix[boats][boats] += wind * wind;
            right[boats] += wind * value;
        }
        weight += n - 1;
    }

    void add(BlockSums other) {
        for (int i = 0; i <= boats; i++) {
            for (int k = 0; k <= boats; k++) {
                matrix[i][k] += other.matrix[i][k];
            }
            right[i] += other.right[i];
        }
        weight += other.weight;
    }

    /** Comparisons in it. */
    double weight() {
        return weight;
    }

    double[][] matrix() {
        return matrix;
    }

    double[] right() {
        return right;
    }

    int boats() {
        return boats;
    }
}
