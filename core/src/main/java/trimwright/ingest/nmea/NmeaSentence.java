package trimwright.ingest.nmea;

import trimwright.ingest.DecimalText;
import trimwright.ingest.TimeText;

/**
 * One sentence, read in place: a view of the bytes between the starting character and the star. The same object is
 * filled again for the next sentence. A field that is asked for as a number and is neither empty nor a number reads as
 * NaN and is remembered in {@link #badField()}, so that one bad field never costs the others.
 *
 * <p>Source: gpsd, "NMEA Revealed" (key gpsd-nmea).
 */
public final class NmeaSentence {
    /** No bad field so far. */
    public static final int NONE = -1;

    private static final int MOST_FIELDS = 2048;

    private byte[] bytes = new byte[0];
    private int start;
    private int end;
    /** Field i reaches from starts[i] to starts[i + 1] - 1, the comma excluded. */
    private final int[] starts = new int[MOST_FIELDS + 2];

    private int fields;
    private int badField;

    /**
     * Looks at {@code bytes[start, end)}: from the talker (behind {@code $} or {@code !}) to the star (excluded). The
     * bytes must stay as they are while the sentence is in use.
     */
    void set(byte[] newBytes, int newStart, int newEnd) {
        bytes = newBytes;
        start = newStart;
        end = newEnd;
        badField = NONE;
        int count = 0;
        starts[0] = newStart;
        for (int i = newStart; i < newEnd; i++) {
            if (newBytes[i] == ',' && count < MOST_FIELDS) {
                starts[++count] = i + 1;
            }
        }
        fields = count;
        starts[count + 1] = newEnd + 1;
    }

    /** The two bytes of the talker as one number; 0 for proprietary and malformed addresses. */
    public int talker() {
        return isStandard() ? (bytes[start] & 0xff) << 8 | (bytes[start + 1] & 0xff) : 0;
    }

    /** The three bytes of the type as one number, see {@link #typeOf}; 0 for proprietary and malformed addresses. */
    public int type() {
        return isStandard() ? typeOf(bytes[start + 2], bytes[start + 3], bytes[start + 4]) : 0;
    }

    static int typeOf(byte a, byte b, byte c) {
        return (a & 0xff) << 16 | (b & 0xff) << 8 | (c & 0xff);
    }

    private boolean isStandard() {
        // P begins a maker's own sentence, which has no talker.
        return starts[1] - 1 - start == 5 && bytes[start] != 'P';
    }

    /** Number of fields behind the address. */
    public int fieldCount() {
        return fields;
    }

    /** Length of field i, counted from 1 behind the address; 0 beyond the last. */
    public int length(int i) {
        return i > fields ? 0 : starts[i + 1] - 1 - starts[i];
    }

    public boolean isEmpty(int i) {
        for (int at = 0; at < length(i); at++) {
            if (bytes[starts[i] + at] != ' ') {
                return false;
            }
        }
        return true;
    }

    /** The only letter of field i, in upper case; 0 if the field is not one letter. */
    public byte letter(int i) {
        if (length(i) != 1) {
            return 0;
        }
        byte letter = bytes[starts[i]];
        return letter >= 'a' && letter <= 'z' ? (byte) (letter - 'a' + 'A') : letter;
    }

    /** The byte at that place of field i. */
    public byte byteAt(int i, int at) {
        return bytes[starts[i] + at];
    }

    /** Whether field i is a number; asking does not mark it. */
    boolean isNumber(int i) {
        return i <= fields && !Double.isNaN(DecimalText.parse(bytes, starts[i], starts[i + 1] - 1, (byte) '.'));
    }

    /** The number in field i; NaN if it is empty or no number. */
    public double number(int i) {
        if (isEmpty(i)) {
            return Double.NaN;
        }
        double value = DecimalText.parse(bytes, starts[i], starts[i + 1] - 1, (byte) '.');
        if (Double.isNaN(value)) {
            markBad(i);
        }
        return value;
    }

    /**
     * The time of day in field i, {@code hhmmss} with any number of decimals.
     *
     * @return ns of the day, or {@link TimeText#NONE} if it is empty or no time
     */
    public long timeOfDay(int i) {
        if (isEmpty(i)) {
            return TimeText.NONE;
        }
        int from = starts[i];
        int to = starts[i + 1] - 1;
        if (to - from < 6) {
            markBad(i);
            return TimeText.NONE;
        }
        long fraction = 0;
        if (to - from > 6) {
            boolean decimals = bytes[from + 6] == '.';
            for (int at = from + 7; at < to; at++) {
                decimals &= TimeText.isDigit(bytes[at]);
            }
            if (!decimals) {
                markBad(i);
                return TimeText.NONE;
            }
            fraction = TimeText.fraction(bytes, from + 7, to);
        }
        long time = TimeText.timeOfDay(
                TimeText.digits(bytes, from, 2),
                TimeText.digits(bytes, from + 2, 2),
                TimeText.digits(bytes, from + 4, 2),
                fraction);
        if (time == TimeText.NONE) {
            markBad(i);
        }
        return time;
    }

    /** The whole number of that many digits at a place of field i; -1 if there is none. */
    public int digits(int i, int at, int count) {
        return at + count > length(i) ? -1 : TimeText.digits(bytes, starts[i] + at, count);
    }

    /** Remembers that field i cannot be what it should be. */
    void markBad(int i) {
        if (badField == NONE) {
            badField = i;
        }
    }

    /** The first field that was asked for and is not what it should be, or {@link #NONE}. */
    public int badField() {
        return badField;
    }

    byte[] bytes() {
        return bytes;
    }

    int start() {
        return start;
    }

    int end() {
        return end;
    }
}
