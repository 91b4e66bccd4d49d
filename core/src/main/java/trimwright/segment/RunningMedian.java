package trimwright.segment;

import java.util.Arrays;

/** Values kept sorted, so that their median is at hand. */
final class RunningMedian {
    private double[] sorted;
    private int size;

    /** @param expected number of values; more may come */
    RunningMedian(int expected) {
        this.sorted = new double[Math.max(1, expected)];
    }

    void add(double value) {
        if (size == sorted.length) {
            sorted = Arrays.copyOf(sorted, 2 * size);
        }
        int place = place(value);
        System.arraycopy(sorted, place, sorted, place + 1, size - place);
        sorted[place] = value;
        size++;
    }

    void remove(double value) {
        int place = place(value);
        System.arraycopy(sorted, place + 1, sorted, place, size - place - 1);
        size--;
    }

    /** Whether all values are so near to their median. */
    boolean isWithin(double distance) {
        double median = (sorted[(size - 1) / 2] + sorted[size / 2]) / 2;
        return sorted[size - 1] - median <= distance && median - sorted[0] <= distance;
    }

    private int place(double value) {
        int place = Arrays.binarySearch(sorted, 0, size, value);
        return place < 0 ? -place - 1 : place;
    }
}
