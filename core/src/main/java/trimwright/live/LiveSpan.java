package trimwright.live;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** The last so many values, one a second; NaN has no part in a mean. */
final class LiveSpan {
    private final int seconds;
    private final Deque<Double> values = new ArrayDeque<>();

    LiveSpan(int seconds) {
        this.seconds = seconds;
    }

    void add(double value) {
        values.addLast(value);
        if (values.size() > seconds) {
            values.removeFirst();
        }
    }

    void clear() {
        values.clear();
    }

    /** Mean; NaN with fewer than so many values. */
    double mean(int fewest) {
        double sum = 0;
        int count = 0;
        for (double value : values) {
            if (!Double.isNaN(value)) {
                sum += value;
                count++;
            }
        }
        return count < fewest ? Double.NaN : sum / count;
    }

    /** The first of so many values; NaN while there are fewer. */
    double oldest(int many) {
        Double first = values.peekFirst();
        return values.size() < many || first == null ? Double.NaN : first;
    }

    List<Double> toList() {
        return new ArrayList<>(values);
    }
}
