package trimwright.ingest;

import java.util.Arrays;

/** A list of numbers that grows. */
public final class DoubleList {
    private double[] items = new double[64];
    private int size;

    public void add(double item) {
        if (size == items.length) {
            items = Arrays.copyOf(items, size + (size >> 1));
        }
        items[size++] = item;
    }

    public double get(int i) {
        return items[i];
    }

    public int size() {
        return size;
    }

    public double[] toArray() {
        return Arrays.copyOf(items, size);
    }
}
