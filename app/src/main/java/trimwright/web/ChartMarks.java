package trimwright.web;

import java.util.Arrays;
import java.util.List;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Quality;

/** The samples of a channel that are left out of its line because something speaks against them, and what. */
final class ChartMarks {
    /** Columns of a channel without any. */
    static final List<double[]> NONE = List.of(new double[0], new double[0]);

    private final long[] timeNanos;
    private final byte[] marks;

    private ChartMarks(long[] timeNanos, byte[] marks) {
        this.timeNanos = timeNanos;
        this.marks = marks;
    }

    static ChartMarks of(ChannelGroup group, Channel channel) {
        int n = 0;
        long[] times = new long[channel.size()];
        byte[] marks = channel.qualityToArray();
        for (int i = 0; i < marks.length; i++) {
            if (marks[i] != Quality.GOOD.ordinal() && marks[i] != Quality.ABSENT.ordinal()) {
                times[n] = group.timeNanos(i);
                marks[n++] = marks[i];
            }
        }
        return new ChartMarks(Arrays.copyOf(times, n), Arrays.copyOf(marks, n));
    }

    /**
     * Times (s since 1970) and marks (ordinals of {@link Quality}, as in Parquet) of a stretch of time, thinned to the
     * first of each kind in each bucket.
     */
    List<double[]> between(long fromNanos, long toNanos, int buckets) {
        double width = Math.max(1.0, (toNanos - fromNanos) / (double) buckets);
        long[] lastOfKind = new long[Quality.values().length];
        Arrays.fill(lastOfKind, -1);
        int n = 0;
        double[] times = new double[timeNanos.length];
        double[] kinds = new double[timeNanos.length];
        for (int i = 0; i < timeNanos.length; i++) {
            if (timeNanos[i] < fromNanos || timeNanos[i] > toNanos) {
                continue;
            }
            long bucket = (long) ((timeNanos[i] - fromNanos) / width);
            if (lastOfKind[marks[i]] != bucket) {
                lastOfKind[marks[i]] = bucket;
                times[n] = timeNanos[i] / 1e9;
                kinds[n++] = marks[i];
            }
        }
        return List.of(Arrays.copyOf(times, n), Arrays.copyOf(kinds, n));
    }
}
