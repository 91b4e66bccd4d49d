package trimwright.ingest;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The time of everything in a log: marks resolved to UTC, checked, and the timeline that they make. */
public final class Clock {
    /** Chosen: beyond this, a place outside the log's own times is marked as repaired. */
    private static final long FAR_OUTSIDE = 2_000_000_000L;

    private final Timeline timeline;
    private final long[] times;
    private final @Nullable ClockCheck check;

    private Clock(Timeline timeline, long[] times, @Nullable ClockCheck check) {
        this.timeline = timeline;
        this.times = times;
        this.check = check;
    }

    /**
     * @param marks may be empty: then the log begins at the start and is spaced by the given pace
     * @param start given by the user (ns since 1970 UTC), or null
     * @param paceIfUnknown ns for one position, for a log with one time or none
     * @return null where the log has no date and no start is given
     */
    public static @Nullable Clock of(
            ClockMarks marks, @Nullable Long start, double paceIfUnknown, Issues issues, Set<IngestNote> notes) {
        long[] times = new Calendar(issues, notes).resolve(marks, start);
        if (times == null) {
            return null;
        }
        if (times.length == 0) {
            if (start == null) {
                return null;
            }
            notes.add(IngestNote.SPACING_ASSUMED);
            Stretch whole = new Stretch(Long.MIN_VALUE, new long[] {0}, new long[] {start});
            return new Clock(new Timeline(List.of(whole), paceIfUnknown), times, null);
        }
        ClockCheck check = new ClockCheck(marks, times, issues);
        return new Clock(new Timeline(check.stretches(), paceIfUnknown), times, check);
    }

    /** ns since 1970 UTC at a position, or {@link Timeline#NONE}. */
    public long at(long position) {
        return timeline.at(position);
    }

    /** The last time that the log states at or before a position and that the clock is built on. */
    public long anchorBefore(long position) {
        return timeline.anchorBefore(position);
    }

    /** Whether a position lies so far outside the log's own times that its time is a guess. */
    public boolean isFarOutside(long position) {
        return check != null && timeline.extrapolated(position) > FAR_OUTSIDE;
    }

    /** The time that a mark states, or {@link Timeline#NONE} where it was found wrong or its stretch ceded it. */
    public long ofMark(int mark, long position) {
        if (check == null || check.isOutlier(mark) || !timeline.owns(position, times[mark])) {
            return Timeline.NONE;
        }
        return times[mark];
    }

    /** UTC of a mark as it stands, checked or not. */
    public long statedBy(int mark) {
        return times[mark];
    }

    /** Number of the stretch in which a position lies; more than one where the clock went back. */
    public int stretchAt(long position) {
        return timeline.stretchAt(position);
    }
}
