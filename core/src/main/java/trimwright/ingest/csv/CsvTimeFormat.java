package trimwright.ingest.csv;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.Days;
import trimwright.ingest.DecimalText;
import trimwright.ingest.TimeText;

/**
 * How a table writes time.
 *
 * <p>{@code iso} (2026-05-09T12:00:00.25, a space for the T and a zone allowed); {@code epoch_s}, {@code epoch_ms},
 * {@code epoch_us}, {@code epoch_ns} since 1970; {@code elapsed_s} since the given start; or a pattern of {@code yyyy yy
 * MM dd HH mm ss} with any characters between, decimals behind the seconds allowed. A single letter takes one or two
 * digits. A pattern without day gives times of day. Two-digit years: 80 to 99 are 19xx.
 */
public final class CsvTimeFormat {
    private static final int PIVOT_YEAR = 80;
    private static final long QUARTER = 900_000_000_000L;

    private enum Kind {
        ISO,
        EPOCH,
        ELAPSED,
        PATTERN
    }

    private final String text;
    private final Kind kind;
    /** ns in one unit of a number. */
    private final double unit;

    private final ZoneRules zone;
    private final TimeText iso = new TimeText();
    private final Days days = new Days();
    private final int[] parts = new int[6];
    private long cachedQuarter = Long.MIN_VALUE;
    private long cachedOffset;

    private CsvTimeFormat(String text, Kind kind, double unit, ZoneId zone) {
        this.text = text;
        this.kind = kind;
        this.unit = unit;
        this.zone = zone.getRules();
    }

    /** The format of that name or pattern, or null if it is neither. */
    public static @Nullable CsvTimeFormat find(String text, ZoneId zone) {
        return switch (text) {
            case "iso" -> new CsvTimeFormat(text, Kind.ISO, 0, zone);
            case "epoch_s" -> new CsvTimeFormat(text, Kind.EPOCH, 1e9, zone);
            case "epoch_ms" -> new CsvTimeFormat(text, Kind.EPOCH, 1e6, zone);
            case "epoch_us" -> new CsvTimeFormat(text, Kind.EPOCH, 1e3, zone);
            case "epoch_ns" -> new CsvTimeFormat(text, Kind.EPOCH, 1, zone);
            case "elapsed_s" -> new CsvTimeFormat(text, Kind.ELAPSED, 1e9, zone);
            default -> isPattern(text) ? new CsvTimeFormat(text, Kind.PATTERN, 0, zone) : null;
        };
    }

    private static boolean isPattern(String text) {
        boolean letters = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            letters &= !Character.isLetter(c) || "yMdHmsT".indexOf(c) >= 0;
        }
        boolean day = text.contains("y") && text.contains("M") && text.contains("d");
        boolean noDay = !text.contains("y") && !text.contains("M") && !text.contains("d");
        return letters && (day || noDay) && text.contains("H") && text.contains("m");
    }

    /** Whether a text gives a time of day only. */
    public boolean isTimeOfDay() {
        return kind == Kind.PATTERN && !text.contains("y");
    }

    /** Whether a number counts from the start that the user gives. */
    public boolean isElapsed() {
        return kind == Kind.ELAPSED;
    }

    /**
     * ns since 1970 UTC; of a time of day ns since midnight UTC; of an elapsed time ns since the start.
     *
     * @return {@link TimeText#NONE} if the text does not fit
     */
    long parse(byte[] bytes, int from, int to, byte point) {
        return switch (kind) {
            case EPOCH -> epoch(bytes, from, to, point);
            case ELAPSED -> {
                double value = DecimalText.parse(bytes, from, to, point);
                yield Double.isNaN(value) ? TimeText.NONE : Math.round(value * unit);
            }
            case ISO -> {
                long time = iso.iso(bytes, from, to);
                yield time == TimeText.NONE || iso.hadZone() ? time : time - offset(time);
            }
            case PATTERN -> pattern(bytes, from, to);
        };
    }

    /** A double holds nanoseconds since 1970 to 256 ns only, so the whole part is read by itself. */
    private long epoch(byte[] bytes, int from, int to, byte point) {
        int i = from;
        long whole = 0;
        while (i < to && TimeText.isDigit(bytes[i]) && i - from < 19) {
            whole = whole * 10 + (bytes[i++] - '0');
        }
        double fraction = 0;
        if (i < to) {
            fraction = bytes[i] == point ? DecimalText.parse(bytes, i, to, point) : Double.NaN;
            if (i + 1 == to) {
                fraction = 0;
            }
        }
        boolean overflows = whole < 0 || whole > Long.MAX_VALUE / (long) unit;
        return i == from || overflows || Double.isNaN(fraction)
                ? TimeText.NONE
                : whole * (long) unit + Math.round(fraction * unit);
    }

    private long pattern(byte[] bytes, int from, int to) {
        java.util.Arrays.fill(parts, 0);
        int at = from;
        int i = 0;
        long fraction = 0;
        while (i < text.length()) {
            char c = text.charAt(i);
            int run = 1;
            while (i + run < text.length() && text.charAt(i + run) == c) {
                run++;
            }
            int part = "yMdHms".indexOf(c);
            if (part < 0) {
                if (at >= to || bytes[at] != (byte) c) {
                    return TimeText.NONE;
                }
                at++;
                i++;
                continue;
            }
            at = number(bytes, at, to, part, run);
            if (at < 0) {
                return TimeText.NONE;
            }
            if (c == 's' && at < to && (bytes[at] == '.' || bytes[at] == ',')) {
                int end = at + 1;
                while (end < to && TimeText.isDigit(bytes[end])) {
                    end++;
                }
                fraction = TimeText.fraction(bytes, at + 1, end);
                at = end;
            }
            i += run;
        }
        long time = TimeText.timeOfDay(parts[3], parts[4], parts[5], fraction);
        return at != to || time == TimeText.NONE ? TimeText.NONE : onItsDay(time);
    }

    private int number(byte[] bytes, int from, int to, int part, int run) {
        int most = run == 1 ? 2 : run;
        int least = run;
        int at = from;
        int value = 0;
        while (at < to && at - from < most && TimeText.isDigit(bytes[at])) {
            value = value * 10 + (bytes[at++] - '0');
        }
        parts[part] = value;
        return at - from < least ? -1 : at;
    }

    private long onItsDay(long time) {
        if (isTimeOfDay()) {
            return Math.floorMod(time - offset(time), Days.NANOS_PER_DAY);
        }
        int year = parts[0];
        if (year < 100) {
            year += year >= PIVOT_YEAR ? 1900 : 2000;
        }
        long day = days.of(year, parts[1], parts[2]);
        if (day == Days.NONE) {
            return TimeText.NONE;
        }
        long local = day * Days.NANOS_PER_DAY + time;
        return local - offset(local);
    }

    /** Offset of the zone at that local time (ns); it changes on quarters of an hour only. */
    private long offset(long local) {
        long quarter = Math.floorDiv(local, QUARTER);
        if (quarter != cachedQuarter) {
            cachedQuarter = quarter;
            LocalDateTime at = LocalDateTime.ofEpochSecond(Math.floorDiv(local, 1_000_000_000L), 0, ZoneOffset.UTC);
            cachedOffset = zone.getOffset(at).getTotalSeconds() * 1_000_000_000L;
        }
        return cachedOffset;
    }
}
