package trimwright.units;

/**
 * Statistics of angles by their unit vectors (Fisher, Statistical Analysis of Circular Data, 1993: mean direction and
 * circular standard deviation; from memory, not opened). Absent samples (NaN) are left out.
 */
public final class Circular {
    private Circular() {}

    /** Mean direction (rad) of {@code angles[from..to)}, in (-pi, pi]; NaN without samples or where they cancel out. */
    public static double mean(double[] angles, int from, int to) {
        double x = 0;
        double y = 0;
        int count = 0;
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(angles[i])) {
                x += StrictMath.cos(angles[i]);
                y += StrictMath.sin(angles[i]);
                count++;
            }
        }
        return count == 0 || StrictMath.hypot(x, y) < 1e-9 * count ? Double.NaN : Angles.signed(StrictMath.atan2(y, x));
    }

    /** Root of the mean square way from the mean direction (rad); NaN without samples. */
    public static double deviation(double[] angles, int from, int to) {
        double mean = mean(angles, from, to);
        double sum = 0;
        int count = 0;
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(angles[i])) {
                double way = Angles.difference(angles[i], mean);
                sum += way * way;
                count++;
            }
        }
        return count == 0 ? Double.NaN : Math.sqrt(sum / count);
    }

    /**
     * Mean direction (rad) of the mean over {@code half} samples on either side of each sample, NaN where the sample
     * itself is absent; the range is that of {@link Angles#compass}.
     */
    public static double[] smooth(double[] angles, int half) {
        int n = angles.length;
        double[] x = new double[n + 1];
        double[] y = new double[n + 1];
        for (int i = 0; i < n; i++) {
            boolean absent = Double.isNaN(angles[i]);
            x[i + 1] = x[i] + (absent ? 0 : StrictMath.cos(angles[i]));
            y[i + 1] = y[i] + (absent ? 0 : StrictMath.sin(angles[i]));
        }
        double[] smooth = new double[n];
        for (int i = 0; i < n; i++) {
            int from = Math.max(0, i - half);
            int to = Math.min(n, i + half + 1);
            smooth[i] = Double.isNaN(angles[i])
                    ? Double.NaN
                    : Angles.compass(StrictMath.atan2(y[to] - y[from], x[to] - x[from]));
        }
        return smooth;
    }
}
