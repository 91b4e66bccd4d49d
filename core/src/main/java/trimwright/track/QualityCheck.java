package trimwright.track;

import java.util.ArrayList;
import java.util.List;

/**
 * Marks samples that a sensor cannot have meant. Values and times stay as they are: what to do about a mark is for the
 * reader to decide. A mark that a sample already bears stays. Limits: {@link ChannelRule}.
 */
public final class QualityCheck {
    /** Chosen: a value that stays away from the old level for this many samples is a new level, not a jump. */
    private static final int NEW_LEVEL = 3;

    /** Chosen: a still value over fewer samples says little. */
    private static final int FEWEST_STILL = 10;

    private QualityCheck() {}

    /** The same group with marks set. */
    public static ChannelGroup mark(ChannelGroup group) {
        List<Channel> channels = new ArrayList<>(group.channels());
        markNullIsland(group, channels);
        for (int c = 0; c < channels.size(); c++) {
            Channel channel = channels.get(c);
            byte[] marks = channel.qualityToArray();
            ChannelRule rule = ChannelRule.of(channel.path());
            markRange(channel, rule, marks);
            markJumps(group, channel, rule, marks);
            markStill(group, channel, rule, marks);
            channels.set(c, channel.withQuality(marks));
        }
        return new ChannelGroup(group.name(), group.timesToArray(), channels);
    }

    private static boolean isGood(byte[] marks, int i) {
        return marks[i] == Quality.GOOD.ordinal();
    }

    private static void markRange(Channel channel, ChannelRule rule, byte[] marks) {
        for (int i = 0; i < marks.length; i++) {
            double value = channel.get(i);
            if (isGood(marks, i) && (value < rule.least() || value > rule.most() || Double.isInfinite(value))) {
                marks[i] = (byte) Quality.OUT_OF_RANGE.ordinal();
            }
        }
    }

    private static void markJumps(ChannelGroup group, Channel channel, ChannelRule rule, byte[] marks) {
        if (rule.fastest() == Double.MAX_VALUE) {
            return;
        }
        int last = -1;
        int[] away = new int[NEW_LEVEL];
        int count = 0;
        for (int i = 0; i < marks.length; i++) {
            if (!isGood(marks, i)) {
                continue;
            }
            if (last < 0 || isReachable(group, channel, rule, last, i)) {
                setAll(marks, away, count, Quality.JUMP);
                count = 0;
                last = i;
                continue;
            }
            if (count > 0 && !isReachable(group, channel, rule, away[count - 1], i)) {
                setAll(marks, away, count, Quality.JUMP);
                count = 0;
            }
            away[count++] = i;
            if (count == NEW_LEVEL) {
                // The first of a new level is where it jumped; the rest are sound.
                setAll(marks, away, 1, Quality.JUMP);
                count = 0;
                last = i;
            }
        }
        setAll(marks, away, count, Quality.JUMP);
    }

    private static void setAll(byte[] marks, int[] at, int count, Quality quality) {
        for (int i = 0; i < count; i++) {
            marks[at[i]] = (byte) quality.ordinal();
        }
    }

    private static boolean isReachable(ChannelGroup group, Channel channel, ChannelRule rule, int from, int to) {
        double seconds = (group.timeNanos(to) - group.timeNanos(from)) / 1e9;
        return rule.distance(channel.get(to), channel.get(from)) <= rule.step() + rule.fastest() * seconds;
    }

    private static void markStill(ChannelGroup group, Channel channel, ChannelRule rule, byte[] marks) {
        if (rule.still() == ChannelRule.Still.ALLOWED) {
            return;
        }
        int first = 0;
        while (first < marks.length) {
            double value = channel.get(first);
            int end = first + 1;
            int samples = 1;
            // Absent samples do not end a still spell, and do not count.
            while (end < marks.length && (channel.get(end) == value || Double.isNaN(channel.get(end)))) {
                samples += Double.isNaN(channel.get(end)) ? 0 : 1;
                end++;
            }
            double seconds = (group.timeNanos(end - 1) - group.timeNanos(first)) / 1e9;
            boolean excused = value == 0 && rule.still() == ChannelRule.Still.ZERO_ALLOWED;
            if (!Double.isNaN(value) && !excused && samples >= FEWEST_STILL && seconds > rule.stillSeconds()) {
                for (int i = first; i < end; i++) {
                    if (isGood(marks, i)) {
                        marks[i] = (byte) Quality.FROZEN.ordinal();
                    }
                }
            }
            first = end;
        }
    }

    /** A position of exactly zero and zero is a receiver without one. */
    private static void markNullIsland(ChannelGroup group, List<Channel> channels) {
        int latitude = indexOf(channels, Paths.LATITUDE);
        int longitude = indexOf(channels, Paths.LONGITUDE);
        if (latitude < 0 || longitude < 0) {
            return;
        }
        byte[] north = channels.get(latitude).qualityToArray();
        byte[] east = channels.get(longitude).qualityToArray();
        for (int i = 0; i < group.size(); i++) {
            if (channels.get(latitude).get(i) == 0 && channels.get(longitude).get(i) == 0) {
                north[i] = (byte) Quality.OUT_OF_RANGE.ordinal();
                east[i] = (byte) Quality.OUT_OF_RANGE.ordinal();
            }
        }
        channels.set(latitude, channels.get(latitude).withQuality(north));
        channels.set(longitude, channels.get(longitude).withQuality(east));
    }

    private static int indexOf(List<Channel> channels, String path) {
        for (int i = 0; i < channels.size(); i++) {
            String own = channels.get(i).path();
            if (own.equals(path) || own.startsWith(path + "@")) {
                return i;
            }
        }
        return -1;
    }
}
