package trimwright.ingest.signalk;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import trimwright.ingest.DoubleList;
import trimwright.ingest.LongList;
import trimwright.ingest.Sampled;
import trimwright.ingest.Timeline;
import trimwright.track.Paths;

/** All values that one source sent for one path of Signal K, in order of arrival, before their times are settled. */
final class DeltaRows {
    private static final List<String> POSITION = List.of(Paths.LATITUDE, Paths.LONGITUDE);
    private static final List<String> ATTITUDE = List.of(Paths.ROLL, Paths.PITCH);

    /** How a row gets its time. */
    interface Placing {
        /**
         * ns since 1970 UTC, or {@link Timeline#NONE} for a row that is left out.
         *
         * @param place as given with the row
         * @param mark as given with the row
         */
        long time(long place, long mark);

        /** What is known of that time. */
        default Sampled.TimeOrigin origin(long place, long mark) {
            return Sampled.TimeOrigin.LOG;
        }
    }

    private final List<String> channels;
    private final LongList places = new LongList();
    private final LongList lines = new LongList();
    private final LongList marks = new LongList();
    private final DoubleList[] values;

    /** @param channels from {@link #together} */
    DeltaRows(List<String> channels) {
        this.channels = channels;
        values = new DoubleList[channels.size()];
        Arrays.setAll(values, i -> new DoubleList());
    }

    /** The channels that come as one value with the given one: both halves of a position, an attitude, else itself. */
    static List<String> together(String channel) {
        return POSITION.contains(channel) ? POSITION : ATTITUDE.contains(channel) ? ATTITUDE : List.of(channel);
    }

    /** For names of groups: the path without its first part, {@code wind-angleapparent}. */
    String word() {
        String first = channels.get(0);
        String path = channels.size() > 1 ? first.substring(0, first.lastIndexOf('.')) : first;
        return path.substring(path.indexOf('.') + 1).replace('.', '-').toLowerCase(Locale.ROOT);
    }

    /**
     * @param place where the row stands in the recording, by the measure of its reader
     * @param mark not negative where the update states its time
     * @param paths of an update, with a value each
     */
    void add(long place, long line, long mark, List<String> paths, double[] found) {
        places.add(place);
        lines.add(line);
        marks.add(mark);
        for (int i = 0; i < values.length; i++) {
            int at = paths.indexOf(channels.get(i));
            values[i].add(at < 0 ? Double.NaN : found[at]);
        }
    }

    /** The rows that have a time. */
    Sampled placed(Placing placing) {
        Sampled samples = new Sampled(channels);
        for (int row = 0; row < places.size(); row++) {
            long time = placing.time(places.get(row), marks.get(row));
            if (time == Timeline.NONE) {
                continue;
            }
            samples.begin(time, lines.get(row), placing.origin(places.get(row), marks.get(row)));
            for (int i = 0; i < values.length; i++) {
                samples.put(i, values[i].get(row));
            }
        }
        return samples;
    }
}
