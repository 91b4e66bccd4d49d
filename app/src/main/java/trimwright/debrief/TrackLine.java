package trimwright.debrief;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import trimwright.course.LocalPlane;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;

/** Where a boat went: its good positions. For drawing. */
public final class TrackLine {
    private final long[] timeNanos;
    private final double[] latitude;
    private final double[] longitude;

    private TrackLine(long[] timeNanos, double[] latitude, double[] longitude) {
        this.timeNanos = timeNanos;
        this.latitude = latitude;
        this.longitude = longitude;
    }

    /** The line of a track; empty where the log has no position. */
    public static TrackLine of(BoatTrack track) {
        ChannelGroup group = track.findGroupOf(Paths.LATITUDE);
        @Nullable Channel latitude = group == null ? null : group.find(Paths.LATITUDE);
        @Nullable Channel longitude = group == null ? null : group.find(Paths.LONGITUDE);
        if (group == null || latitude == null || longitude == null) {
            return new TrackLine(new long[0], new double[0], new double[0]);
        }
        long[] times = new long[group.size()];
        double[] latitudes = new double[group.size()];
        double[] longitudes = new double[group.size()];
        int n = 0;
        for (int i = 0; i < group.size(); i++) {
            if (latitude.isGood(i) && longitude.isGood(i)) {
                times[n] = group.timeNanos(i);
                latitudes[n] = latitude.get(i);
                longitudes[n++] = longitude.get(i);
            }
        }
        return new TrackLine(Arrays.copyOf(times, n), Arrays.copyOf(latitudes, n), Arrays.copyOf(longitudes, n));
    }

    /** The first position, or null. */
    @Nullable
    public Position first() {
        return timeNanos.length == 0 ? null : new Position(latitude[0], longitude[0]);
    }

    /** Times (s since 1970), norths and easts (m) of at most that many positions, evenly taken, of a stretch of time. */
    public double[][] between(LocalPlane plane, long fromNanos, long toNanos, int most) {
        int from = firstAtOrAfter(fromNanos);
        int to = firstAtOrAfter(toNanos + 1);
        int count = Math.max(0, to - from);
        int stride = Math.max(1, (count + most - 1) / most);
        int rows = (count + stride - 1) / stride;
        double[][] columns = new double[3][rows];
        for (int row = 0; row < rows; row++) {
            int i = Math.min(to - 1, from + row * stride);
            PlanePoint point = plane.toPlane(new Position(latitude[i], longitude[i]));
            columns[0][row] = timeNanos[i] / 1e9;
            columns[1][row] = point.north();
            columns[2][row] = point.east();
        }
        return columns;
    }

    private int firstAtOrAfter(long nanos) {
        int at = Arrays.binarySearch(timeNanos, nanos);
        return at >= 0 ? at : -at - 1;
    }
}
