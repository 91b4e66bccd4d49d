package trimwright.live;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.ChannelRule;

/** The last samples of one channel of one source. What cannot be, and what comes late, is left out and counted. */
final class LiveChannel {
    /** Chosen: ten seconds of a fast sensor. */
    private static final int KEPT = 512;

    /** Older than this, and than three of its intervals, a value is stale (s); as the debrief joins no wider gaps. */
    private static final double STALE = 2.5;

    private static final double INTERVALS = 3.0;

    private final String path;
    private final ChannelRule rule;
    private final long[] times = new long[KEPT];
    private final double[] values = new double[KEPT];
    private long count;
    private long changedNanos = Long.MIN_VALUE;
    private double interval = Double.NaN;
    private long leftOut;

    LiveChannel(String path) {
        this.path = path;
        rule = ChannelRule.of(path);
    }

    void put(long nanos, double value) {
        if (value < rule.least() || value > rule.most() || (count > 0 && nanos < lastNanos())) {
            leftOut++;
            return;
        }
        if (count > 0 && nanos == lastNanos()) {
            // Several sentences in one piece: the last one is the newest.
            count--;
        }
        if (count == 0 || value != last()) {
            changedNanos = nanos;
        }
        if (count > 0) {
            double apart = (nanos - lastNanos()) / 1e9;
            // Longer gaps tell of a silence, not of the sensor's pace.
            double usual = Double.isNaN(interval) ? apart : interval;
            interval = usual + (Math.min(apart, 4 * usual + 0.1) - usual) / 8;
        }
        times[at(count)] = nanos;
        values[at(count)] = value;
        count++;
    }

    private static int at(long i) {
        return (int) (i % KEPT);
    }

    String path() {
        return path;
    }

    private long lastNanos() {
        return times[at(count - 1)];
    }

    private double last() {
        return values[at(count - 1)];
    }

    /** Time since the last sample (s); infinite before the first. */
    double age(long nowNanos) {
        return count == 0 ? Double.POSITIVE_INFINITY : (nowNanos - lastNanos()) / 1e9;
    }

    boolean isStale(long nowNanos) {
        return age(nowNanos) > Math.max(STALE, Double.isNaN(interval) ? STALE : INTERVALS * interval);
    }

    /** Whether the value stands exactly still for longer than this kind of sensor can. */
    boolean isFrozen(long nowNanos) {
        boolean zero = count > 0 && last() == 0;
        boolean counts =
                rule.still() == ChannelRule.Still.NEVER || (rule.still() == ChannelRule.Still.ZERO_ALLOWED && !zero);
        return count > 0 && counts && (nowNanos - changedNanos) / 1e9 > rule.stillSeconds();
    }

    /** The last value, or NaN where it is stale or frozen. */
    double fresh(long nowNanos) {
        return count == 0 || isStale(nowNanos) || isFrozen(nowNanos) ? Double.NaN : last();
    }

    /** Samples that could not be used so far. */
    long leftOut() {
        return leftOut;
    }

    /** The samples from that time on, or null where there are none. */
    @Nullable
    ChannelGroup since(long fromNanos) {
        long first = Math.max(0, count - KEPT);
        while (first < count && times[at(first)] < fromNanos) {
            first++;
        }
        int n = (int) (count - first);
        if (n == 0) {
            return null;
        }
        long[] stamps = new long[n];
        double[] samples = new double[n];
        for (int i = 0; i < n; i++) {
            stamps[i] = times[at(first + i)];
            samples[i] = values[at(first + i)];
        }
        return new ChannelGroup(path, stamps, List.of(Channel.of(path, samples)));
    }
}
