package trimwright.units;

import java.util.Arrays;

/** The middle of many figures. */
public final class Median {
    private Median() {}

    /** Middle one in order of size, of an even number the mean of the two middle ones; of at least one. */
    public static double of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
