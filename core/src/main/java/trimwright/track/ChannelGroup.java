package trimwright.track;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Channels that share their time stamps (UTC, nanoseconds since 1970, strictly rising). */
public final class ChannelGroup {
    private final String name;
    private final long[] timeNanos;
    private final List<Channel> channels;

    public ChannelGroup(String name, long[] timeNanos, List<Channel> channels) {
        for (int i = 1; i < timeNanos.length; i++) {
            if (timeNanos[i] <= timeNanos[i - 1]) {
                throw new IllegalArgumentException(name + ": time does not rise at sample " + i);
            }
        }
        for (Channel channel : channels) {
            if (channel.size() != timeNanos.length) {
                throw new IllegalArgumentException(
                        channel.path() + ": " + channel.size() + " samples for " + timeNanos.length + " times");
            }
        }
        this.name = name;
        this.timeNanos = timeNanos.clone();
        this.channels = List.copyOf(channels);
    }

    public String name() {
        return name;
    }

    public int size() {
        return timeNanos.length;
    }

    public long timeNanos(int i) {
        return timeNanos[i];
    }

    /** A copy of all time stamps. */
    public long[] timesToArray() {
        return timeNanos.clone();
    }

    public List<Channel> channels() {
        return channels;
    }

    public @Nullable Channel find(String path) {
        for (Channel channel : channels) {
            if (channel.path().equals(path)) {
                return channel;
            }
        }
        return null;
    }

    /** Index of the last sample at or before that time, -1 where there is none. */
    public int indexAtOrBefore(long nanos) {
        int at = Arrays.binarySearch(timeNanos, nanos);
        return at >= 0 ? at : -at - 2;
    }
}
