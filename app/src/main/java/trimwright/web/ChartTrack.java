package trimwright.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import trimwright.debrief.TrackLine;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;

/** One boat's session held ready for charts: channels are prepared when first asked for and then kept. */
final class ChartTrack {
    private final Map<String, Supplier<ChartChannel>> sources = new LinkedHashMap<>();
    private final Map<String, ChartChannel> ready = new ConcurrentHashMap<>();
    private final Map<String, ChartMarks> marks = new LinkedHashMap<>();
    private final TrackLine line;

    ChartTrack(BoatTrack track) {
        line = TrackLine.of(track);
        for (ChannelGroup group : track.groups()) {
            for (Channel channel : group.channels()) {
                sources.put(channel.path(), () -> ChartChannel.of(group, channel));
                marks.put(channel.path(), ChartMarks.of(group, channel));
            }
        }
    }

    /** Paths of all channels, in the order of the track. */
    List<String> paths() {
        return List.copyOf(sources.keySet());
    }

    @Nullable
    ChartChannel find(String path) {
        Supplier<ChartChannel> source = sources.get(path);
        return source == null ? null : ready.computeIfAbsent(path, key -> source.get());
    }

    /** Samples of a channel that speak against themselves; null where there is no such channel. */
    @Nullable
    ChartMarks findMarks(String path) {
        return marks.get(path);
    }

    TrackLine line() {
        return line;
    }
}
