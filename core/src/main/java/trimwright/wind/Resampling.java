package trimwright.wind;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Quality;
import trimwright.units.Angles;

/**
 * Brings one channel onto the session clock. Only good samples and those whose time was repaired count; between two of
 * them the value is interpolated, angles as unit vectors; where they are further apart than the longest gap, and before
 * the first and after the last, it is NaN. A channel faster than the clock is averaged over each step.
 */
public final class Resampling {
    /** Slow channels may be bridged over this many of their own intervals (chosen). */
    private static final double INTERVALS_BRIDGED = 3.0;

    /** A channel counts as faster than the clock below this share of the step (chosen: two samples must fit in). */
    private static final double FASTER = 0.6;

    private Resampling() {}

    /** The channel on the clock; all NaN where the track has none. */
    public static double[] onto(
            SessionClock clock, BoatTrack track, String path, Quantity.Kind kind, double longestGap) {
        ChannelGroup group = track.findGroupOf(path);
        Channel channel = group == null ? null : group.find(path);
        double[] out = new double[clock.size()];
        Arrays.fill(out, Double.NaN);
        if (group == null || channel == null) {
            return out;
        }
        Samples samples = Samples.of(group, channel);
        if (samples == null) {
            return out;
        }
        double gap = Math.max(longestGap, INTERVALS_BRIDGED * samples.interval);
        if (samples.interval < FASTER * clock.step()) {
            average(clock, samples, kind, out);
        }
        interpolate(clock, samples, kind, (long) (gap * 1e9), out);
        return out;
    }

    /** Median time between good samples (s); NaN for fewer than two. */
    public static double interval(BoatTrack track, String path) {
        ChannelGroup group = track.findGroupOf(path);
        Channel channel = group == null ? null : group.find(path);
        Samples samples = group == null || channel == null ? null : Samples.of(group, channel);
        return samples == null ? Double.NaN : samples.interval;
    }

    private static void average(SessionClock clock, Samples samples, Quantity.Kind kind, double[] out) {
        int next = 0;
        long half = clock.stepNanos() / 2;
        for (int i = 0; i < out.length; i++) {
            long until = clock.timeNanos(i) + half;
            while (next < samples.times.length && samples.times[next] <= until - clock.stepNanos()) {
                next++;
            }
            double x = 0;
            double y = 0;
            int count = 0;
            for (; next < samples.times.length && samples.times[next] <= until; next++, count++) {
                double value = samples.values[next];
                x += kind == Quantity.Kind.PLAIN ? value : StrictMath.cos(value);
                y += kind == Quantity.Kind.PLAIN ? 0 : StrictMath.sin(value);
            }
            if (count > 0) {
                out[i] = kind == Quantity.Kind.PLAIN ? x / count : angle(x / count, y / count, kind);
            }
        }
    }

    /** Fills what is still NaN. */
    private static void interpolate(
            SessionClock clock, Samples samples, Quantity.Kind kind, long gapNanos, double[] out) {
        int last = samples.times.length - 1;
        int at = 0;
        for (int i = 0; i < out.length; i++) {
            long time = clock.timeNanos(i);
            while (at < last && samples.times[at + 1] <= time) {
                at++;
            }
            if (!Double.isNaN(out[i]) || time < samples.times[at]) {
                continue;
            }
            if (time == samples.times[at]) {
                out[i] = range(samples.values[at], kind);
            } else if (at < last && samples.times[at + 1] - samples.times[at] <= gapNanos) {
                double share = (double) (time - samples.times[at]) / (samples.times[at + 1] - samples.times[at]);
                out[i] = between(samples.values[at], samples.values[at + 1], share, kind);
            }
        }
    }

    private static double between(double before, double after, double share, Quantity.Kind kind) {
        if (kind == Quantity.Kind.PLAIN) {
            return before + share * (after - before);
        }
        double x = (1 - share) * StrictMath.cos(before) + share * StrictMath.cos(after);
        double y = (1 - share) * StrictMath.sin(before) + share * StrictMath.sin(after);
        return angle(x, y, kind);
    }

    private static double angle(double x, double y, Quantity.Kind kind) {
        return StrictMath.hypot(x, y) < 1e-9 ? Double.NaN : range(StrictMath.atan2(y, x), kind);
    }

    static double range(double value, Quantity.Kind kind) {
        return switch (kind) {
            case PLAIN -> value;
            case SIGNED -> Angles.signed(value);
            case COMPASS -> Angles.compass(value);
        };
    }

    private static final class Samples {
        final long[] times;
        final double[] values;
        final double interval;

        private Samples(long[] times, double[] values, double interval) {
            this.times = times;
            this.values = values;
            this.interval = interval;
        }

        /** The usable samples, or null for fewer than two. */
        static @Nullable Samples of(ChannelGroup group, Channel channel) {
            long[] times = new long[channel.size()];
            double[] values = new double[channel.size()];
            int n = 0;
            for (int i = 0; i < channel.size(); i++) {
                Quality quality = channel.quality(i);
                if ((quality == Quality.GOOD || quality == Quality.TIME_REPAIRED) && !Double.isNaN(channel.get(i))) {
                    times[n] = group.timeNanos(i);
                    values[n++] = channel.get(i);
                }
            }
            if (n < 2) {
                return null;
            }
            long[] steps = new long[n - 1];
            for (int i = 1; i < n; i++) {
                steps[i - 1] = times[i] - times[i - 1];
            }
            Arrays.sort(steps);
            return new Samples(Arrays.copyOf(times, n), Arrays.copyOf(values, n), steps[(n - 1) / 2] / 1e9);
        }
    }
}
