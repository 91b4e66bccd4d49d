package trimwright.ingest;

import java.util.Arrays;
import java.util.List;

/**
 * Time as a function of position in a log, from the times that stand in it. Rules and reasons: docs/theory/ingest.md.
 *
 * <p>Between two times the positions are spread evenly. Where a log paused (more than {@value #PAUSE_SECONDS} s, and the
 * lines between would not fill a fifth of it at the log's usual pace) they keep that pace behind the first. Before the
 * first and behind the last time the usual pace holds. Where the clock went back for good, the log falls into stretches;
 * of two that overlap in time the longer one keeps the overlap.
 */
public final class Timeline {
    /** No time: the position lies in an overlap that belongs to another stretch. */
    public static final long NONE = TimeText.NONE;

    /** Chosen: satellite receivers report every second, some every two. */
    private static final int PAUSE_SECONDS = 3;

    private static final long PAUSE = PAUSE_SECONDS * 1_000_000_000L;
    private static final int FILLED = 5;

    private final List<Stretch> stretches;
    private final double pace;

    /**
     * @param paceIfUnknown ns for one position where the log has a single time
     */
    Timeline(List<Stretch> stretches, double paceIfUnknown) {
        this.stretches = List.copyOf(stretches);
        this.pace = usualPace(this.stretches, paceIfUnknown);
    }

    private static double usualPace(List<Stretch> stretches, double otherwise) {
        int count = stretches.stream()
                .mapToInt(stretch -> Math.max(0, stretch.size() - 1))
                .sum();
        double[] all = new double[count];
        double[] steady = new double[count];
        int n = 0;
        int m = 0;
        for (Stretch stretch : stretches) {
            for (int i = 1; i < stretch.size(); i++) {
                long dt = stretch.time(i) - stretch.time(i - 1);
                double rate = (double) dt / (stretch.position(i) - stretch.position(i - 1));
                all[n++] = rate;
                if (dt <= PAUSE) {
                    steady[m++] = rate;
                }
            }
        }
        double[] used = m > 0 ? Arrays.copyOf(steady, m) : all;
        if (used.length == 0) {
            return otherwise;
        }
        Arrays.sort(used);
        return used[used.length / 2];
    }

    /** ns since 1970 UTC at that position, or {@link #NONE}. */
    public long at(long position) {
        Stretch stretch = stretchOf(position);
        long time = within(stretch, position);
        return stretch.owns(time) ? time : NONE;
    }

    /** How far outside the times of its stretch that position was placed (ns); 0 between two of them. */
    public long extrapolated(long position) {
        Stretch stretch = stretchOf(position);
        if (position < stretch.position(0)) {
            return (long) ((stretch.position(0) - position) * pace);
        }
        int last = stretch.size() - 1;
        return position > stretch.position(last) ? (long) ((position - stretch.position(last)) * pace) : 0;
    }

    /** Time of the last anchor at or before that position, or {@link #NONE}. */
    long anchorBefore(long position) {
        Stretch stretch = stretchOf(position);
        int i = stretch.indexAtOrBefore(position);
        return i < 0 ? NONE : stretch.time(i);
    }

    /** Whether a time at that position is kept. */
    boolean owns(long position, long time) {
        return stretchOf(position).owns(time);
    }

    /** Number of the stretch of a position, from 0. */
    int stretchAt(long position) {
        int i = stretches.size() - 1;
        while (i > 0 && position < stretches.get(i).begin()) {
            i--;
        }
        return i;
    }

    private Stretch stretchOf(long position) {
        return stretches.get(stretchAt(position));
    }

    private long within(Stretch stretch, long position) {
        int i = stretch.indexAtOrBefore(position);
        if (i < 0) {
            return stretch.time(0) - (long) ((stretch.position(0) - position) * pace);
        }
        long ahead = position - stretch.position(i);
        if (i == stretch.size() - 1) {
            return stretch.time(i) + (long) (ahead * pace);
        }
        long dt = stretch.time(i + 1) - stretch.time(i);
        long positions = stretch.position(i + 1) - stretch.position(i);
        boolean paused = dt > PAUSE && positions * pace * FILLED < dt;
        return stretch.time(i) + (long) (paused ? ahead * pace : ahead * ((double) dt / positions));
    }
}
