package trimwright.ingest;

/**
 * Places in a log where a time is written: position (order of arrival), line, and the time, either as ns since 1970 UTC
 * or as a time of day with or without a date.
 */
public final class ClockMarks {
    /** No date. */
    public static final long NO_DATE = -1;

    private final LongList positions = new LongList();
    private final LongList lines = new LongList();
    private final LongList nanos = new LongList();
    private final LongList dates = new LongList();

    /** A full time: ns since 1970 UTC. */
    public int add(long position, long line, long timeNanos) {
        return add(position, line, timeNanos, Long.MAX_VALUE);
    }

    /**
     * A time of day.
     *
     * @param date from {@link #date} or {@link #NO_DATE}
     * @return the number of the mark
     */
    public int add(long position, long line, long timeOfDayNanos, long date) {
        positions.add(position);
        lines.add(line);
        nanos.add(timeOfDayNanos);
        dates.add(date);
        return positions.size() - 1;
    }

    /** @param year four digits, or two where the log has no more */
    public static long date(int year, int month, int day) {
        return (year * 100L + month) * 100 + day;
    }

    /** Moves all times by so much (ns); only for full times. */
    public void shift(long byNanos) {
        for (int i = 0; i < nanos.size(); i++) {
            nanos.set(i, nanos.get(i) + byNanos);
        }
    }

    public int size() {
        return positions.size();
    }

    public long position(int i) {
        return positions.get(i);
    }

    public long line(int i) {
        return lines.get(i);
    }

    long nanos(int i) {
        return nanos.get(i);
    }

    /** Whether some mark has a date or is a full time. */
    public boolean hasAnyDate() {
        for (int i = 0; i < size(); i++) {
            if (hasDate(i)) {
                return true;
            }
        }
        return false;
    }

    boolean isFull(int i) {
        return dates.get(i) == Long.MAX_VALUE;
    }

    boolean hasDate(int i) {
        return dates.get(i) != NO_DATE;
    }

    int year(int i) {
        return (int) (dates.get(i) / 10_000);
    }

    int month(int i) {
        return (int) (dates.get(i) / 100 % 100);
    }

    int day(int i) {
        return (int) (dates.get(i) % 100);
    }
}
