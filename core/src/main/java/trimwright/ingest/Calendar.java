package trimwright.ingest;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * From marks as written to UTC: centuries, dates that only some marks have, days that pass at midnight.
 *
 * <p>A two-digit year takes its century from a four-digit date of the same log; without one 80 to 99 are 19xx and 00 to
 * 79 are 20xx (chosen: satellite time began in 1980). A time of day without a date lies on the day that brings it
 * nearest to the mark before. Dates of receivers are believed, but a date that lies whole cycles of 1024 weeks from a
 * given start is put right by them: the week number of the satellite signal has ten bits (IS-GPS-200, from memory).
 */
final class Calendar {
    private static final int PIVOT_YEAR = 80;
    private static final long CYCLE = 7168 * Days.NANOS_PER_DAY;
    /** Chosen: how far a given start may lie from the log and still name its cycle. */
    private static final long NEAR_START = 30 * Days.NANOS_PER_DAY;

    private final Issues issues;
    private final Set<IngestNote> notes;
    private final Days days = new Days();

    Calendar(Issues issues, Set<IngestNote> notes) {
        this.issues = issues;
        this.notes = notes;
    }

    /**
     * UTC of each mark (ns since 1970), {@link TimeText#NONE} where its date cannot be.
     *
     * @param start given by the user (ns since 1970 UTC), or null
     * @return null where no mark has a date and no start is given
     */
    long @Nullable [] resolve(ClockMarks marks, @Nullable Long start) {
        long[] times = new long[marks.size()];
        int century = centuryOf(marks);
        long clock = TimeText.NONE;
        boolean dated = false;
        for (int i = 0; i < times.length; i++) {
            if (marks.isFull(i)) {
                times[i] = marks.nanos(i);
            } else {
                long day = marks.hasDate(i) ? dayOf(marks, i, century) : Days.NONE;
                if (day == Days.NONE) {
                    times[i] = clock == TimeText.NONE ? marks.nanos(i) : nearest(marks.nanos(i), clock);
                } else {
                    times[i] = day * Days.NANOS_PER_DAY + marks.nanos(i);
                }
                if (day != Days.NONE && !dated) {
                    shift(times, i, clock == TimeText.NONE ? 0 : times[i] - nearest(marks.nanos(i), clock));
                }
                dated |= day != Days.NONE;
            }
            dated |= marks.isFull(i);
            clock = times[i];
        }
        return dated || times.length == 0 ? checked(times, start) : fromStart(times, start);
    }

    private static void shift(long[] times, int end, long by) {
        for (int i = 0; i < end; i++) {
            times[i] += by;
        }
    }

    /** That time of day on the day that brings it nearest to the clock. */
    private static long nearest(long timeOfDay, long clock) {
        return timeOfDay
                + Math.floorDiv(clock - timeOfDay + Days.NANOS_PER_DAY / 2, Days.NANOS_PER_DAY) * Days.NANOS_PER_DAY;
    }

    private long @Nullable [] fromStart(long[] times, @Nullable Long start) {
        if (start == null) {
            return null;
        }
        notes.add(IngestNote.DATE_FROM_START);
        shift(times, times.length, nearest(Math.floorMod(times[0], Days.NANOS_PER_DAY), start) - times[0]);
        return times;
    }

    private long[] checked(long[] times, @Nullable Long start) {
        if (start == null || times.length == 0) {
            return times;
        }
        long away = start - times[0];
        long cycles = Math.round((double) away / CYCLE);
        if (cycles != 0 && Math.abs(away - cycles * CYCLE) < NEAR_START) {
            issues.add(IssueKind.DATE_CYCLE, 1, Long.toString(cycles * 1024) + " weeks");
            shift(times, times.length, cycles * CYCLE);
        } else if (Math.abs(away) > Days.NANOS_PER_DAY) {
            notes.add(IngestNote.START_NOT_USED);
        }
        return times;
    }

    private int centuryOf(ClockMarks marks) {
        for (int i = 0; i < marks.size(); i++) {
            if (!marks.isFull(i) && marks.hasDate(i) && marks.year(i) >= 100) {
                return marks.year(i);
            }
        }
        return 0;
    }

    private long dayOf(ClockMarks marks, int i, int fullYear) {
        int year = marks.year(i);
        if (year < 100) {
            if (fullYear > 0) {
                notes.add(IngestNote.CENTURY_FROM_LOG);
                // The year of that ending nearest to the full one: 1999 and "00" belong to one night.
                year += Math.floorDiv(fullYear - year + 50, 100) * 100;
            } else {
                notes.add(IngestNote.CENTURY_ASSUMED);
                year += year >= PIVOT_YEAR ? 1900 : 2000;
            }
        }
        long day = days.of(year, marks.month(i), marks.day(i));
        if (day == Days.NONE) {
            issues.add(IssueKind.BAD_DATE, marks.line(i), year + "-" + marks.month(i) + "-" + marks.day(i));
        }
        return day;
    }
}
