package trimwright.fleet;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Which of many questions chance does not answer: of those told at most a given share is false in the long run. Benjamini and
 * Hochberg, Controlling the false discovery rate, J. R. Statist. Soc. B 57 (1995) 289-300, section 3.1. Valid for independent
 * and for positively dependent questions.
 */
public final class FalseDiscoveries {
    private FalseDiscoveries() {}

    /**
     * For each whether it is told.
     *
     * @param chances how often chance alone gives as much (-), none NaN
     * @param share of false ones that is allowed (-), in (0, 1)
     */
    public static boolean[] told(double[] chances, double share) {
        int m = chances.length;
        int[] order = IntStream.range(0, m)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> chances[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        int last = -1;
        for (int k = 0; k < m; k++) {
            if (chances[order[k]] <= share * (k + 1) / m) {
                last = k;
            }
        }
        boolean[] told = new boolean[m];
        Arrays.stream(order, 0, last + 1).forEach(i -> told[i] = true);
        return told;
    }
}
