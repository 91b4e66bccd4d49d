package trimwright.web;

import java.util.Arrays;
import java.util.List;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Decimation;
import trimwright.units.Angles;
import trimwright.units.Circular;

/**
 * One channel made ready for a chart: good samples only, in the unit people read, angles kept together round their mean,
 * and a NaN in the middle of each gap.
 */
final class ChartChannel {
    /** A line is broken where samples are missing for this many usual intervals, and for two seconds (chosen). */
    private static final double BREAK_INTERVALS = 3.5;

    private static final long BREAK_NANOS = 2_000_000_000L;

    private final ChannelFace face;
    private final ChannelGroup group;
    private final Channel channel;

    private ChartChannel(ChannelFace face, ChannelGroup group) {
        this.face = face;
        this.group = group;
        this.channel = group.channels().get(0);
    }

    static ChartChannel of(ChannelGroup group, Channel channel) {
        ChannelFace face = ChannelFace.of(channel.path());
        int good = 0;
        long[] times = new long[channel.size()];
        double[] values = new double[channel.size()];
        for (int i = 0; i < channel.size(); i++) {
            if (channel.isGood(i)) {
                times[good] = group.timeNanos(i);
                values[good++] = channel.get(i);
            }
        }
        times = Arrays.copyOf(times, good);
        values = shown(Arrays.copyOf(values, good), face);
        return new ChartChannel(face, withBreaks(channel.path(), times, values));
    }

    private static double[] shown(double[] values, ChannelFace face) {
        double middle = face.turn() == ChannelFace.Turn.NONE ? Double.NaN : Circular.mean(values, 0, values.length);
        double[] shown = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            double value = Double.isNaN(middle) ? values[i] : middle + Angles.difference(values[i], middle);
            shown[i] = face.shown(value);
        }
        return shown;
    }

    private static ChannelGroup withBreaks(String path, long[] times, double[] values) {
        long longest = longestInterval(times);
        int breaks = 0;
        for (int i = 1; i < times.length; i++) {
            breaks += times[i] - times[i - 1] > longest ? 1 : 0;
        }
        long[] broken = new long[times.length + breaks];
        double[] filled = new double[broken.length];
        int out = 0;
        for (int i = 0; i < times.length; i++) {
            if (i > 0 && times[i] - times[i - 1] > longest) {
                broken[out] = times[i - 1] + (times[i] - times[i - 1]) / 2;
                filled[out++] = Double.NaN;
            }
            broken[out] = times[i];
            filled[out++] = values[i];
        }
        return new ChannelGroup(path, broken, List.of(Channel.of(path, filled)));
    }

    private static long longestInterval(long[] times) {
        long[] intervals = new long[Math.max(0, times.length - 1)];
        for (int i = 0; i < intervals.length; i++) {
            intervals[i] = times[i + 1] - times[i];
        }
        Arrays.sort(intervals);
        long usual = intervals.length == 0 ? 0 : intervals[intervals.length / 2];
        return Math.max(BREAK_NANOS, (long) (BREAK_INTERVALS * usual));
    }

    ChannelFace face() {
        return face;
    }

    /** Number of good samples and breaks. */
    int size() {
        return group.size();
    }

    /** The samples of a stretch of time, thinned to the lowest and highest of each bucket. */
    Decimation between(long fromNanos, long toNanos, int buckets) {
        // One sample more on either side, so that the line leaves the picture instead of ending in it.
        int before = Math.max(0, group.indexAtOrBefore(fromNanos));
        int after = Math.min(group.size() - 1, group.indexAtOrBefore(toNanos) + 1);
        if (group.size() == 0) {
            return Decimation.of(group, channel, fromNanos, toNanos, buckets);
        }
        return Decimation.of(group, channel, group.timeNanos(before), group.timeNanos(after), buckets);
    }
}
