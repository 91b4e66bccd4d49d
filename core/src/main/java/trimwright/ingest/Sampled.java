package trimwright.ingest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Quality;

/** Rows of values with a time each, in order of arrival, on their way to a group of channels. */
public final class Sampled {
    private final List<String> paths;
    private final LongList times = new LongList();
    private final LongList lines = new LongList();
    private final DoubleList[] values;
    private final int[] present;
    private final List<Boolean> repaired = new ArrayList<>();

    public Sampled(List<String> paths) {
        this.paths = List.copyOf(paths);
        values = new DoubleList[paths.size()];
        Arrays.setAll(values, i -> new DoubleList());
        present = new int[values.length];
    }

    public List<String> paths() {
        return paths;
    }

    public int size() {
        return times.size();
    }

    public long time(int i) {
        return times.get(i);
    }

    public long line(int i) {
        return lines.get(i);
    }

    public double value(int path, int i) {
        return values[path].get(i);
    }

    /** Number of rows that have a value of that path. */
    public int present(int path) {
        return present[path];
    }

    /** What is known of the time of a row. */
    public enum TimeOrigin {
        LOG,
        REPAIRED
    }

    /** Begins a row; {@link #put} follows for each path. */
    public void begin(long timeNanos, long line, TimeOrigin origin) {
        times.add(timeNanos);
        lines.add(line);
        repaired.add(origin == TimeOrigin.REPAIRED);
    }

    public void put(int path, double value) {
        values[path].add(value);
        if (!Double.isNaN(value)) {
            present[path]++;
        }
    }

    /** Whether row i says the same as the row of those values. */
    public boolean isSame(int i, double[] other) {
        for (int path = 0; path < values.length; path++) {
            if (Double.compare(values[path].get(i), other[path]) != 0) {
                return false;
            }
        }
        return true;
    }

    /**
     * The group in order of time. Rows whose time an earlier one has are left out and counted. Paths without any value
     * are left out; null if none remains.
     */
    public @Nullable ChannelGroup toGroup(String name, List<String> names, Issues issues) {
        int[] order = order();
        int[] kept = new int[order.length];
        int n = 0;
        for (int row : order) {
            if (n == 0 || times.get(kept[n - 1]) < times.get(row)) {
                kept[n++] = row;
            } else {
                issues.add(IssueKind.TIME_NOT_RISING, lines.get(row), name);
            }
        }
        kept = Arrays.copyOf(kept, n);
        List<Channel> channels = new ArrayList<>();
        for (int path = 0; path < values.length; path++) {
            if (present(path) > 0) {
                channels.add(channel(path, names.get(path), kept));
            }
        }
        if (channels.isEmpty()) {
            return null;
        }
        long[] stamps = Arrays.stream(kept).mapToLong(times::get).toArray();
        return new ChannelGroup(name, stamps, Collections.unmodifiableList(channels));
    }

    private int[] order() {
        if (isRising()) {
            return IntStream.range(0, size()).toArray();
        }
        return IntStream.range(0, size())
                .boxed()
                .sorted(Comparator.comparingLong(times::get))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private boolean isRising() {
        for (int i = 1; i < size(); i++) {
            if (times.get(i) <= times.get(i - 1)) {
                return false;
            }
        }
        return true;
    }

    private Channel channel(int path, String name, int[] kept) {
        double[] samples = new double[kept.length];
        byte[] marks = new byte[kept.length];
        for (int k = 0; k < samples.length; k++) {
            int row = kept[k];
            samples[k] = values[path].get(row);
            Quality quality = Double.isNaN(samples[k])
                    ? Quality.ABSENT
                    : repaired.get(row) ? Quality.TIME_REPAIRED : Quality.GOOD;
            marks[k] = (byte) quality.ordinal();
        }
        return new Channel(name, samples, marks);
    }
}
