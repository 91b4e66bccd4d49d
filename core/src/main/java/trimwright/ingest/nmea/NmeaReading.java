package trimwright.ingest.nmea;

import java.util.Arrays;
import trimwright.ingest.TimeText;

/** What one sentence says, in SI; the same object is filled again for the next sentence. */
public final class NmeaReading {
    /** Whether the clock behind a time is in order. */
    public enum ClockTrust {
        /** The sentence gives no time. */
        NONE,
        /** The receiver says that its position is void; its clock may be anything. */
        VOID,
        /** The receiver has a position, or the sentence has no mark for it. */
        VALID
    }

    private NmeaLayout layout = NmeaLayout.ZDA;
    private int talker;
    private final double[] values = new double[NmeaLayout.MOST_VALUES];
    private ClockTrust clockTrust = ClockTrust.NONE;
    private long timeOfDayNanos = TimeText.NONE;
    private int year = -1;
    private int month;
    private int day;

    void reset(NmeaLayout newLayout, int newTalker) {
        layout = newLayout;
        talker = newTalker;
        Arrays.fill(values, Double.NaN);
        clockTrust = ClockTrust.NONE;
        timeOfDayNanos = TimeText.NONE;
        year = -1;
    }

    void setValue(int i, double value) {
        values[i] = value;
    }

    void setTime(long newTimeOfDayNanos, ClockTrust trust) {
        timeOfDayNanos = newTimeOfDayNanos;
        clockTrust = newTimeOfDayNanos == TimeText.NONE ? ClockTrust.NONE : trust;
    }

    void setDate(int newYear, int newMonth, int newDay) {
        year = newYear;
        month = newMonth;
        day = newDay;
    }

    public NmeaLayout layout() {
        return layout;
    }

    /** As {@link NmeaSentence#talker()}. */
    public int talker() {
        return talker;
    }

    /** Value i of the layout's paths, SI; NaN if absent. */
    public double value(int i) {
        return values[i];
    }

    public boolean hasValue() {
        for (double value : values) {
            if (!Double.isNaN(value)) {
                return true;
            }
        }
        return false;
    }

    public ClockTrust clockTrust() {
        return clockTrust;
    }

    /** UTC, or {@link TimeText#NONE}. */
    public long timeOfDayNanos() {
        return timeOfDayNanos;
    }

    /** Four digits, or two as the log has them (below 100); -1 without a date. */
    public int year() {
        return year;
    }

    public int month() {
        return month;
    }

    public int day() {
        return day;
    }
}
