package trimwright.track;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Several files of one boat as one track. Groups of the same name (a morning's and an afternoon's log) become one group
 * in order of time; of samples with the same time stamp the one of the earlier file stays. A path that two groups hold
 * stays with the first; in the other it gets the group's name after an {@code @}, as readers do.
 */
public final class TrackMerge {
    private TrackMerge() {}

    public static BoatTrack of(String boat, List<ChannelGroup> groups) {
        Map<String, List<ChannelGroup>> byName = new LinkedHashMap<>();
        for (ChannelGroup group : groups) {
            byName.computeIfAbsent(group.name(), name -> new ArrayList<>()).add(group);
        }
        Set<String> taken = new HashSet<>();
        List<ChannelGroup> merged = new ArrayList<>();
        for (List<ChannelGroup> same : byName.values()) {
            merged.add(renamed(same.size() == 1 ? same.get(0) : joined(same), taken));
        }
        return new BoatTrack(boat, merged);
    }

    private static ChannelGroup renamed(ChannelGroup group, Set<String> taken) {
        List<Channel> channels = new ArrayList<>();
        boolean changed = false;
        for (Channel channel : group.channels()) {
            if (taken.add(channel.path())) {
                channels.add(channel);
            } else {
                String path = channel.path() + "@" + group.name();
                changed = true;
                if (taken.add(path)) {
                    channels.add(new Channel(path, channel.toArray(), channel.qualityToArray()));
                }
            }
        }
        return changed ? new ChannelGroup(group.name(), group.timesToArray(), channels) : group;
    }

    private static ChannelGroup joined(List<ChannelGroup> same) {
        List<long[]> order = new ArrayList<>();
        for (int g = 0; g < same.size(); g++) {
            for (int i = 0; i < same.get(g).size(); i++) {
                order.add(new long[] {same.get(g).timeNanos(i), g, i});
            }
        }
        order.sort(Comparator.comparingLong(sample -> sample[0]));
        List<long[]> kept = new ArrayList<>();
        for (long[] sample : order) {
            if (kept.isEmpty() || kept.get(kept.size() - 1)[0] < sample[0]) {
                kept.add(sample);
            }
        }
        Set<String> paths = new LinkedHashSet<>();
        same.forEach(group -> group.channels().forEach(channel -> paths.add(channel.path())));
        List<Channel> channels = new ArrayList<>();
        for (String path : paths) {
            channels.add(joined(path, same, kept));
        }
        long[] times = kept.stream().mapToLong(sample -> sample[0]).toArray();
        return new ChannelGroup(same.get(0).name(), times, channels);
    }

    private static Channel joined(String path, List<ChannelGroup> same, List<long[]> kept) {
        double[] values = new double[kept.size()];
        byte[] marks = new byte[kept.size()];
        Arrays.fill(values, Double.NaN);
        Arrays.fill(marks, (byte) Quality.ABSENT.ordinal());
        for (int k = 0; k < values.length; k++) {
            Channel from = same.get((int) kept.get(k)[1]).find(path);
            if (from != null) {
                int i = (int) kept.get(k)[2];
                values[k] = from.get(i);
                marks[k] = (byte) from.quality(i).ordinal();
            }
        }
        return new Channel(path, values, marks);
    }
}
