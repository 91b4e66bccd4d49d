package trimwright.polar;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Makes a curve through answers rise, as a wing's equations need of a section's lift: where it falls by a step, because the flap
 * has let go, it becomes level at the mean of both sides. The nearest rising curve by least squares (common practice: pooling of
 * neighbours that are in the wrong order).
 */
final class Rising {
    private Rising() {}

    private record Level(double sum, double weight, int size) {
        double mean() {
            return sum / weight;
        }

        Level with(Level other) {
            return new Level(sum + other.sum, weight + other.weight, size + other.size);
        }
    }

    /**
     * The nearest rising row of values; each counts by the way to its neighbours.
     *
     * @param places rising
     * @param values at them
     */
    static double[] of(double[] places, double[] values) {
        Deque<Level> levels = new ArrayDeque<>();
        int last = places.length - 1;
        for (int i = 0; i <= last; i++) {
            double weight = places[Math.min(i + 1, last)] - places[Math.max(i - 1, 0)];
            Level level = new Level(weight * values[i], weight, 1);
            while (!levels.isEmpty() && levels.getLast().mean() > level.mean()) {
                level = levels.removeLast().with(level);
            }
            levels.addLast(level);
        }
        double[] rising = new double[values.length];
        int i = 0;
        for (Level level : levels) {
            // A level of one stays as it is, to the bit.
            for (int k = 0; k < level.size(); k++, i++) {
                rising[i] = level.size() == 1 ? values[i] : level.mean();
            }
        }
        return rising;
    }
}
