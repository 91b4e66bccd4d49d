package trimwright.ingest;

import java.time.LocalDate;
import java.time.YearMonth;

/** Days since 1970 of calendar dates; the last one is remembered, as logs name the same day again and again. */
public final class Days {
    /** No such day. */
    public static final long NONE = Long.MIN_VALUE;

    public static final long NANOS_PER_DAY = 86_400_000_000_000L;

    private int lastDate = -1;
    private long lastDay = NONE;

    /** Days since 1970-01-01, or {@link #NONE} where the calendar has no such date. */
    public long of(int year, int month, int day) {
        int date = (year * 100 + month) * 100 + day;
        if (date != lastDate) {
            lastDate = date;
            lastDay = exists(year, month, day) ? LocalDate.of(year, month, day).toEpochDay() : NONE;
        }
        return lastDay;
    }

    private static boolean exists(int year, int month, int day) {
        return year >= 1
                && year <= 9999
                && month >= 1
                && month <= 12
                && day >= 1
                && day <= YearMonth.of(year, month).lengthOfMonth();
    }
}
