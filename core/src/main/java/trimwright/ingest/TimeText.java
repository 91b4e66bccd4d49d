package trimwright.ingest;

/** Date-times out of bytes as loggers write them, without making a text of them. */
public final class TimeText {
    /** Nothing readable. */
    public static final long NONE = Long.MIN_VALUE;

    private final Days days = new Days();
    private boolean zoned;

    /** Whether the last text read had a zone. */
    public boolean hadZone() {
        return zoned;
    }

    /**
     * ISO 8601 date and time, {@code 2023-09-02T12:41:35.168370+00:00}; a space or a dash may stand for the T, the zone may
     * be absent and is then taken as UTC.
     *
     * @return ns since 1970 UTC, or {@link #NONE}
     */
    public long iso(byte[] bytes, int from, int to) {
        zoned = false;
        if (to - from < 19
                || bytes[from + 4] != '-'
                || bytes[from + 7] != '-'
                || !isJoint(bytes[from + 10])
                || bytes[from + 13] != ':'
                || bytes[from + 16] != ':') {
            return NONE;
        }
        int year = digits(bytes, from, 4);
        int month = digits(bytes, from + 5, 2);
        int day = digits(bytes, from + 8, 2);
        long time = timeOfDay(digits(bytes, from + 11, 2), digits(bytes, from + 14, 2), digits(bytes, from + 17, 2), 0);
        long date = year < 0 || month < 0 || day < 0 ? Days.NONE : days.of(year, month, day);
        if (date == Days.NONE || time == NONE) {
            return NONE;
        }
        int i = from + 19;
        long fraction = 0;
        if (i < to && (bytes[i] == '.' || bytes[i] == ',')) {
            int end = i + 1;
            while (end < to && isDigit(bytes[end])) {
                end++;
            }
            fraction = fraction(bytes, i + 1, end);
            i = end;
        }
        long offset = zone(bytes, i, to);
        return offset == NONE ? NONE : date * Days.NANOS_PER_DAY + time + fraction - offset;
    }

    private static boolean isJoint(byte b) {
        return b == 'T' || b == 't' || b == ' ' || b == '-';
    }

    private long zone(byte[] bytes, int from, int to) {
        if (from == to) {
            return 0;
        }
        zoned = true;
        if (to - from == 1 && (bytes[from] == 'Z' || bytes[from] == 'z')) {
            return 0;
        }
        if (bytes[from] != '+' && bytes[from] != '-') {
            return NONE;
        }
        int hours = to - from >= 3 ? digits(bytes, from + 1, 2) : -1;
        int minutes = 0;
        if (to - from == 5) {
            minutes = digits(bytes, from + 3, 2);
        } else if (to - from == 6 && bytes[from + 3] == ':') {
            minutes = digits(bytes, from + 4, 2);
        } else if (to - from != 3) {
            return NONE;
        }
        if (hours < 0 || hours > 18 || minutes < 0 || minutes > 59) {
            return NONE;
        }
        long offset = (hours * 60L + minutes) * 60_000_000_000L;
        return bytes[from] == '-' ? -offset : offset;
    }

    /**
     * Seconds since 1970 with ten digits, or milliseconds with thirteen, with or without a fraction.
     *
     * @return ns since 1970 UTC, or {@link #NONE}
     */
    public static long epoch(byte[] bytes, int from, int to) {
        int i = from;
        long whole = 0;
        while (i < to && isDigit(bytes[i]) && i - from < 14) {
            whole = whole * 10 + (bytes[i] - '0');
            i++;
        }
        int count = i - from;
        long fraction = 0;
        if (i < to && bytes[i] == '.') {
            int end = i + 1;
            while (end < to && isDigit(bytes[end])) {
                end++;
            }
            fraction = fraction(bytes, i + 1, end);
            i = end;
        }
        if (i != to || (count != 10 && count != 13)) {
            return NONE;
        }
        return count == 10 ? whole * 1_000_000_000L + fraction : whole * 1_000_000L + fraction / 1000;
    }

    /**
     * Nanoseconds of the day. A leap second (second 60) is put at the last millisecond of its minute, as no clock here
     * counts 61 seconds.
     *
     * @return {@link #NONE} where one of them is out of range
     */
    public static long timeOfDay(int hour, int minute, int second, long fractionNanos) {
        if (hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 60) {
            return NONE;
        }
        long whole = (hour * 60L + minute) * 60;
        return second == 60
                ? (whole + 59) * 1_000_000_000L + 999_000_000L
                : (whole + second) * 1_000_000_000L + fractionNanos;
    }

    /** The number of that many digits, -1 if one of them is none. */
    public static int digits(byte[] bytes, int from, int count) {
        int value = 0;
        for (int i = from; i < from + count; i++) {
            if (!isDigit(bytes[i])) {
                return -1;
            }
            value = value * 10 + (bytes[i] - '0');
        }
        return value;
    }

    /** Digits behind a decimal point of a second, as nanoseconds; what lies below is cut. */
    public static long fraction(byte[] bytes, int from, int to) {
        long nanos = 0;
        for (int i = 0; i < 9; i++) {
            nanos = nanos * 10 + (from + i < to ? bytes[from + i] - '0' : 0);
        }
        return nanos;
    }

    public static boolean isDigit(byte b) {
        return b >= '0' && b <= '9';
    }
}
