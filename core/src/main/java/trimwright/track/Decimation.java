package trimwright.track;

import java.util.Arrays;

/**
 * A channel thinned for drawing: the span is cut into equal buckets of time and of each bucket the lowest and the
 * highest sample stay, at their own times and in their order. Peaks survive, means do not: nothing is computed from it.
 */
public final class Decimation {
    private final long[] timeNanos;
    private final double[] values;

    private Decimation(long[] timeNanos, double[] values) {
        this.timeNanos = timeNanos;
        this.values = values;
    }

    /**
     * Thins the samples from {@code fromNanos} to {@code toNanos} (both included). A span that holds no more than two
     * samples a bucket comes back whole. A bucket with absent samples only gives one NaN, so a gap stays a gap.
     *
     * @param group holds the time stamps
     * @param channel a channel of that group
     * @param buckets 1 or more
     */
    public static Decimation of(ChannelGroup group, Channel channel, long fromNanos, long toNanos, int buckets) {
        if (channel.size() != group.size()) {
            throw new IllegalArgumentException(channel.path() + " is not of group " + group.name());
        }
        if (buckets < 1) {
            throw new IllegalArgumentException("buckets: " + buckets);
        }
        if (toNanos < fromNanos) {
            return new Decimation(new long[0], new double[0]);
        }
        int first = fromNanos == Long.MIN_VALUE ? 0 : group.indexAtOrBefore(fromNanos - 1) + 1;
        int end = group.indexAtOrBefore(toNanos) + 1;
        int count = Math.max(0, end - first);
        if (count <= 2L * buckets) {
            return whole(group, channel, first, count);
        }
        return thinned(group, channel, first, end, buckets);
    }

    private static Decimation whole(ChannelGroup group, Channel channel, int first, int count) {
        long[] times = new long[count];
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            times[i] = group.timeNanos(first + i);
            values[i] = channel.get(first + i);
        }
        return new Decimation(times, values);
    }

    private static Decimation thinned(ChannelGroup group, Channel channel, int first, int end, int buckets) {
        long[] times = new long[2 * buckets];
        double[] values = new double[2 * buckets];
        int out = 0;
        long start = group.timeNanos(first);
        double width = (group.timeNanos(end - 1) - start + 1.0) / buckets;
        int i = first;
        while (i < end) {
            int bucket = (int) Math.min(buckets - 1, (long) ((group.timeNanos(i) - start) / width));
            long limit = bucket == buckets - 1 ? Long.MAX_VALUE : start + (long) Math.ceil((bucket + 1) * width);
            int lowest = -1;
            int highest = -1;
            int firstOfBucket = i;
            do {
                double value = channel.get(i);
                if (lowest < 0 ? !Double.isNaN(value) : value < channel.get(lowest)) {
                    lowest = i;
                }
                if (highest < 0 ? !Double.isNaN(value) : value > channel.get(highest)) {
                    highest = i;
                }
                i++;
            } while (i < end && group.timeNanos(i) < limit);
            int one = lowest < 0 ? firstOfBucket : Math.min(lowest, highest);
            int other = lowest < 0 ? firstOfBucket : Math.max(lowest, highest);
            times[out] = group.timeNanos(one);
            values[out++] = channel.get(one);
            if (other != one) {
                times[out] = group.timeNanos(other);
                values[out++] = channel.get(other);
            }
        }
        return new Decimation(Arrays.copyOf(times, out), Arrays.copyOf(values, out));
    }

    public int size() {
        return values.length;
    }

    public long timeNanos(int i) {
        return timeNanos[i];
    }

    /** SI, as the channel; NaN for a gap. */
    public double value(int i) {
        return values[i];
    }
}
