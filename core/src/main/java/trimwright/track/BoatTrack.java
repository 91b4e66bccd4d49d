package trimwright.track;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** All that is recorded of one boat in one stretch of time. A path stands in one group only. */
public record BoatTrack(String boat, List<ChannelGroup> groups) {
    public BoatTrack {
        groups = List.copyOf(groups);
    }

    /** The group that holds the channel of that path, or null. */
    public @Nullable ChannelGroup findGroupOf(String path) {
        for (ChannelGroup group : groups) {
            if (group.find(path) != null) {
                return group;
            }
        }
        return null;
    }

    public @Nullable Channel find(String path) {
        ChannelGroup group = findGroupOf(path);
        return group == null ? null : group.find(path);
    }

    /** First time stamp of all groups (ns); throws {@link IllegalStateException} for a track without samples. */
    public long startNanos() {
        return groups.stream()
                .filter(group -> group.size() > 0)
                .mapToLong(group -> group.timeNanos(0))
                .min()
                .orElseThrow(() -> new IllegalStateException(boat + ": no samples"));
    }

    /** Last time stamp of all groups (ns); throws {@link IllegalStateException} for a track without samples. */
    public long endNanos() {
        return groups.stream()
                .filter(group -> group.size() > 0)
                .mapToLong(group -> group.timeNanos(group.size() - 1))
                .max()
                .orElseThrow(() -> new IllegalStateException(boat + ": no samples"));
    }
}
