package trimwright.ingest;

import java.util.Arrays;

/** A part of a log through which the clock runs forward: positions and times, both strictly rising. */
final class Stretch {
    private final long begin;
    private final long[] positions;
    private final long[] times;
    private long from;
    private long to;

    /** @param begin first position that belongs to it */
    Stretch(long begin, long[] positions, long[] times) {
        this.begin = begin;
        this.positions = positions;
        this.times = times;
        from = Long.MIN_VALUE;
        to = Long.MAX_VALUE;
    }

    long begin() {
        return begin;
    }

    int size() {
        return times.length;
    }

    long position(int i) {
        return positions[i];
    }

    long time(int i) {
        return times[i];
    }

    long firstTime() {
        return times[0];
    }

    long lastTime() {
        return times[times.length - 1];
    }

    int indexAtOrBefore(long position) {
        int at = Arrays.binarySearch(positions, position);
        return at >= 0 ? at : -at - 2;
    }

    /** Gives the time from {@code first} to {@code last} to another stretch. */
    void cede(long first, long last) {
        if (first <= firstTime() && last >= lastTime()) {
            from = Long.MAX_VALUE;
        } else if (first <= firstTime()) {
            from = Math.max(from, last + 1);
        } else {
            // What lies behind a stretch that is wholly inside this one goes with it.
            to = Math.min(to, first - 1);
        }
    }

    boolean owns(long time) {
        return time >= from && time <= to;
    }
}
