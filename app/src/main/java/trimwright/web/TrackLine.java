package trimwright.web;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import trimwright.course.LocalPlane;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;

/** Where a boat went, in metres north and east of its first good position. For drawing. */
final class TrackLine {
    private final long[] timeNanos;
    private final double[] north;
    private final double[] east;

    private TrackLine(long[] timeNanos, double[] north, double[] east) {
        this.timeNanos = timeNanos;
        this.north = north;
        this.east = east;
    }

    /** The line of a track; empty where the log has no position. */
    static TrackLine of(BoatTrack track) {
        ChannelGroup group = track.findGroupOf(Paths.LATITUDE);
        @Nullable Channel latitude = group == null ? null : group.find(Paths.LATITUDE);
        @Nullable Channel longitude = group == null ? null : group.find(Paths.LONGITUDE);
        if (group == null || latitude == null || longitude == null) {
            return new TrackLine(new long[0], new double[0], new double[0]);
        }
        long[] times = new long[group.size()];
        double[] north = new double[group.size()];
        double[] east = new double[group.size()];
        int n = 0;
        LocalPlane plane = null;
        for (int i = 0; i < group.size(); i++) {
            if (!latitude.isGood(i) || !longitude.isGood(i)) {
                continue;
            }
            Position position = new Position(latitude.get(i), longitude.get(i));
            if (plane == null) {
                plane = new LocalPlane(position);
            }
            PlanePoint point = plane.toPlane(position);
            times[n] = group.timeNanos(i);
            north[n] = point.north();
            east[n++] = point.east();
        }
        return new TrackLine(Arrays.copyOf(times, n), Arrays.copyOf(north, n), Arrays.copyOf(east, n));
    }

    /** Times, norths and easts of at most that many positions, evenly taken, of a stretch of time. */
    double[][] between(long fromNanos, long toNanos, int most) {
        int from = firstAtOrAfter(fromNanos);
        int to = firstAtOrAfter(toNanos + 1);
        int count = Math.max(0, to - from);
        int stride = Math.max(1, (count + most - 1) / most);
        int rows = (count + stride - 1) / stride;
        double[][] columns = new double[3][rows];
        for (int row = 0; row < rows; row++) {
            int i = Math.min(to - 1, from + row * stride);
            columns[0][row] = timeNanos[i] / 1e9;
            columns[1][row] = north[i];
            columns[2][row] = east[i];
        }
        return columns;
    }

    private int firstAtOrAfter(long nanos) {
        int at = Arrays.binarySearch(timeNanos, nanos);
        return at >= 0 ? at : -at - 1;
    }
}
