package trimwright.track;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How good one channel is: counts, and the spells in which something is wrong.
 *
 * @param path of the channel
 * @param group in which it stands
 * @param samples time stamps of the group
 * @param counts samples by mark; marks that do not occur are absent
 * @param rate usual number of samples in a second (Hz); NaN with fewer than two
 * @param spells in order of time, at most {@value #MOST_SPELLS}
 * @param spellCount all of them
 */
public record ChannelQuality(
        String path,
        String group,
        int samples,
        Map<Quality, Integer> counts,
        double rate,
        List<Spell> spells,
        int spellCount) {
    private static final int MOST_SPELLS = 200;

    /** Chosen: a silence of this many usual intervals, and of two seconds or more, is a gap. */
    private static final int GAP_INTERVALS = 4;

    private static final long SHORTEST_GAP = 2_000_000_000L;

    /** What a spell is. */
    public enum Kind {
        /** No sample at all, or none with a value. */
        GAP,
        FROZEN,
        JUMP,
        OUT_OF_RANGE,
        TIME_REPAIRED
    }

    /**
     * One spell.
     *
     * @param startNanos first bad sample; of a gap the last sample before it
     * @param endNanos last bad sample; of a gap the first sample behind it
     */
    public record Spell(Kind kind, long startNanos, long endNanos) {}

    public ChannelQuality {
        counts = Collections.unmodifiableMap(new EnumMap<>(counts));
        spells = List.copyOf(spells);
    }

    /** Of every channel of the track, in the order of its groups. */
    public static List<ChannelQuality> of(BoatTrack track) {
        List<ChannelQuality> all = new ArrayList<>();
        for (ChannelGroup group : track.groups()) {
            for (Channel channel : group.channels()) {
                all.add(of(group, channel));
            }
        }
        return all;
    }

    /** Of one channel of that group. */
    public static ChannelQuality of(ChannelGroup group, Channel channel) {
        int[] byMark = new int[Quality.values().length];
        for (int i = 0; i < channel.size(); i++) {
            byMark[channel.quality(i).ordinal()]++;
        }
        Map<Quality, Integer> counts = new EnumMap<>(Quality.class);
        for (Quality quality : Quality.values()) {
            if (byMark[quality.ordinal()] > 0) {
                counts.put(quality, byMark[quality.ordinal()]);
            }
        }
        long usual = usualInterval(group, channel);
        List<Spell> spells = spells(group, channel, usual);
        return new ChannelQuality(
                channel.path(),
                group.name(),
                group.size(),
                counts,
                usual > 0 ? 1e9 / usual : Double.NaN,
                spells.subList(0, Math.min(MOST_SPELLS, spells.size())),
                spells.size());
    }

    /** Number of samples with that mark. */
    public int count(Quality quality) {
        return counts.getOrDefault(quality, 0);
    }

    private static long usualInterval(ChannelGroup group, Channel channel) {
        long[] intervals = new long[group.size()];
        int n = 0;
        long last = Long.MIN_VALUE;
        for (int i = 0; i < group.size(); i++) {
            if (!Double.isNaN(channel.get(i))) {
                if (last != Long.MIN_VALUE) {
                    intervals[n++] = group.timeNanos(i) - last;
                }
                last = group.timeNanos(i);
            }
        }
        long[] used = Arrays.copyOf(intervals, n);
        Arrays.sort(used);
        return n == 0 ? 0 : used[n / 2];
    }

    private static List<Spell> spells(ChannelGroup group, Channel channel, long usual) {
        List<Spell> spells = new ArrayList<>();
        long gap = Math.max(SHORTEST_GAP, GAP_INTERVALS * usual);
        int lastValue = -1;
        int i = 0;
        while (i < group.size()) {
            Quality quality = channel.quality(i);
            if (quality == Quality.ABSENT) {
                i++;
                continue;
            }
            if (lastValue >= 0 && group.timeNanos(i) - group.timeNanos(lastValue) > gap) {
                spells.add(new Spell(Kind.GAP, group.timeNanos(lastValue), group.timeNanos(i)));
            }
            int end = i;
            if (quality != Quality.GOOD) {
                while (end + 1 < group.size() && channel.quality(end + 1) == quality) {
                    end++;
                }
                spells.add(new Spell(Kind.valueOf(quality.name()), group.timeNanos(i), group.timeNanos(end)));
            }
            lastValue = end;
            i = end + 1;
        }
        return spells;
    }
}
