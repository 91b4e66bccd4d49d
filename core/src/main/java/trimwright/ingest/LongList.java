package trimwright.ingest;

import java.util.Arrays;

/** A list of long integers that grows. */
public final class LongList {
    private long[] items = new long[64];
    private int size;

    public void add(long item) {
        if (size == items.length) {
            items = Arrays.copyOf(items, size + (size >> 1));
        }
        items[size++] = item;
    }

    public long get(int i) {
        return items[i];
    }

    public void set(int i, long item) {
        items[i] = item;
    }

    public int size() {
        return size;
    }

    public long[] toArray() {
        return Arrays.copyOf(items, size);
    }
}
