package trimwright.track;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How good one channel of a track is, from the marks that its samples bear.
 *
 * @param path name of the channel
 * @param samples number of samples that are not absent
 * @param rate samples a second, from the median time between them; 0 for fewer than two
 * @param coverage share of the track's time within a gap of good samples no longer than {@code gapFrom}
 * @param gaps number of longer gaps between good samples
 * @param longestGap (s), 0 without any
 * @param gapFrom what counts as a gap (s)
 * @param marked number of samples for each mark that speaks against them
 */
public record ChannelSummary(
        String path,
        int samples,
        double rate,
        double coverage,
        int gaps,
        double longestGap,
        double gapFrom,
        Map<Quality, Integer> marked) {
    /** A gap is longer than this, and than three of the channel's own intervals (s), chosen. */
    private static final double SHORTEST_GAP = 2.0;

    private static final double INTERVALS = 3.0;

    public ChannelSummary {
        EnumMap<Quality, Integer> ordered = new EnumMap<>(Quality.class);
        ordered.putAll(marked);
        marked = Collections.unmodifiableMap(ordered);
    }

    /** Number of samples with that mark. */
    public int count(Quality mark) {
        return marked.getOrDefault(mark, 0);
    }

    /** Of one channel of a group, held against the whole time of a track (ns). */
    public static ChannelSummary of(ChannelGroup group, Channel channel, long fromNanos, long toNanos) {
        int samples = 0;
        int good = 0;
        long[] times = new long[channel.size()];
        EnumMap<Quality, Integer> marked = new EnumMap<>(Quality.class);
        for (int i = 0; i < channel.size(); i++) {
            Quality quality = channel.quality(i);
            if (quality == Quality.ABSENT) {
                continue;
            }
            samples++;
            if (quality != Quality.GOOD) {
                marked.merge(quality, 1, Integer::sum);
            }
            if (quality == Quality.GOOD || quality == Quality.TIME_REPAIRED) {
                times[good++] = group.timeNanos(i);
            }
        }
        double interval = medianInterval(times, good);
        double gapFrom = Math.max(SHORTEST_GAP, INTERVALS * interval);
        int gaps = 0;
        double longest = 0;
        double covered = 0;
        for (int i = 1; i < good; i++) {
            double way = (times[i] - times[i - 1]) / 1e9;
            if (way > gapFrom) {
                gaps++;
                longest = Math.max(longest, way);
            } else {
                covered += way;
            }
        }
        double whole = (toNanos - fromNanos) / 1e9;
        double coverage = whole > 0 ? covered / whole : good > 0 ? 1 : 0;
        double rate = interval > 0 ? 1 / interval : 0;
        return new ChannelSummary(channel.path(), samples, rate, coverage, gaps, longest, gapFrom, marked);
    }

    private static double medianInterval(long[] times, int count) {
        if (count < 2) {
            return 0;
        }
        long[] steps = new long[count - 1];
        for (int i = 1; i < count; i++) {
            steps[i - 1] = times[i] - times[i - 1];
        }
        Arrays.sort(steps);
        return steps[(count - 2) / 2] / 1e9;
    }
}
