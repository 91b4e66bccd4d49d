package trimwright.calibration;

/** Makes a series of readings independent of each other, by a linear map that depends on times and noise alone. */
sealed interface Whitening {
    /** The series in units of its noise, each less what those before it foretell. */
    double[] of(double[] series);

    /**
     * A level that walks at random, seen with scatter: innovations of the local-level filter, the first one given away.
     *
     * @param times in order (s)
     * @param walk variance of the walk in a second over that of the scatter (1/s)
     */
    record Walk(double[] times, double walk) implements Whitening {
        @Override
        public double[] of(double[] series) {
            double[] white = new double[series.length];
            double level = series.length == 0 ? 0 : series[0];
            double spread = 1;
            for (int k = 1; k < series.length; k++) {
                spread += walk * (times[k] - times[k - 1]);
                double total = spread + 1;
                double fresh = series[k] - level;
                white[k] = fresh / Math.sqrt(total);
                level += spread / total * fresh;
                spread /= total;
            }
            return white;
        }

        /** Sum of the logarithms of the variances of the innovations: what a likelihood needs beside their squares. */
        double logVariances() {
            double sum = 0;
            double spread = 1;
            for (int k = 1; k < times.length; k++) {
                spread += walk * (times[k] - times[k - 1]);
                sum += StrictMath.log(spread + 1);
                spread /= spread + 1;
            }
            return sum;
        }
    }

    /**
     * First-order dependence from block to block; a longer gap begins anew.
     *
     * @param times in order (s)
     * @param keep correlation of neighbours, 0 to below 1 (-)
     */
    record FirstOrder(double[] times, double keep) implements Whitening {
        private static final double NEIGHBOURS = 1.5 * Block.LENGTH;

        @Override
        public double[] of(double[] series) {
            double[] white = new double[series.length];
            double fresh = Math.sqrt(1 - keep * keep);
            for (int k = 0; k < series.length; k++) {
                boolean follows = k > 0 && times[k] - times[k - 1] < NEIGHBOURS;
                white[k] = follows ? (series[k] - keep * series[k - 1]) / fresh : series[k];
            }
            return white;
        }
    }
}
