package trimwright.ingest.nmea;

import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;

/**
 * Finds sentences in bytes that come in pieces of any size. Lines end in LF, CR or both. A line may begin with a stamp or
 * a TAG block; lines that begin with # are comments. Where a sentence breaks off and another begins on the same line,
 * reading goes on with the second. Memory is bounded: a line over {@value #LONGEST_LINE} bytes is skipped.
 */
public final class NmeaScanner {
    /** Chosen: fifty times the standard's 82 bytes; no logger writes such a line, a binary file does. */
    public static final int LONGEST_LINE = 4096;

    /** Takes each sentence as it is found. */
    public interface Sink {
        /**
         * @param sentence only valid during the call
         * @param line counted from 1
         * @param position bytes from the start of the log: the order of arrival
         * @param stampNanos the logger's own time of the line, or {@link trimwright.ingest.TimeText#NONE}
         */
        void take(NmeaSentence sentence, long line, long position, long stampNanos);
    }

    private final Sink sink;
    private final Issues issues;
    private final ChecksumRule rule;
    private final LineStamp stamp;
    private final NmeaSentence sentence = new NmeaSentence();

    private final byte[] carry = new byte[LONGEST_LINE];
    private int carried;
    private boolean skipping;
    private boolean afterReturn;
    private long lines;
    private long position;

    public NmeaScanner(Issues issues, ChecksumRule rule, Sink sink) {
        this.issues = issues;
        this.rule = rule;
        this.sink = sink;
        stamp = new LineStamp(issues);
    }

    /** Lines begun so far, comments and blank ones included. */
    public long lines() {
        return lines;
    }

    /** Bytes read so far. */
    public long position() {
        return position;
    }

    /** Whether some line had a stamp without a zone. */
    public boolean sawUnzonedStamp() {
        return stamp.sawUnzoned();
    }

    /** Reads on with {@code bytes[from, to)}. */
    public void accept(byte[] bytes, int from, int to) {
        int lineStart = from;
        for (int i = from; i < to; i++) {
            byte b = bytes[i];
            if (b != '\n' && b != '\r') {
                afterReturn = false;
                continue;
            }
            if (b == '\n' && afterReturn) {
                // The second half of CR LF.
                afterReturn = false;
            } else {
                endLine(bytes, lineStart, i, position + (i - from));
                afterReturn = b == '\r';
            }
            lineStart = i + 1;
        }
        keep(bytes, lineStart, to);
        position += to - from;
    }

    /** The log ends; a last line without an end is read. */
    public void end() {
        if (carried > 0 || skipping) {
            endLine(carry, 0, 0, position);
        }
    }

    private void keep(byte[] bytes, int from, int to) {
        if (skipping || from == to) {
            return;
        }
        if (carried + (to - from) > LONGEST_LINE) {
            skipping = true;
            carried = 0;
            issues.add(IssueKind.TOO_LONG, lines + 1, bytes, from, to);
            return;
        }
        System.arraycopy(bytes, from, carry, carried, to - from);
        carried += to - from;
    }

    private void endLine(byte[] bytes, int from, int to, long endPosition) {
        lines++;
        if (skipping) {
            skipping = false;
        } else if (carried > 0) {
            keepRest(bytes, from, to, endPosition);
        } else if (to - from > LONGEST_LINE) {
            issues.add(IssueKind.TOO_LONG, lines, bytes, from, to);
        } else {
            readLine(bytes, from, to, endPosition - (to - from));
        }
        carried = 0;
    }

    private void keepRest(byte[] bytes, int from, int to, long endPosition) {
        int length = carried + (to - from);
        if (length > LONGEST_LINE) {
            issues.add(IssueKind.TOO_LONG, lines, carry, 0, carried);
            return;
        }
        System.arraycopy(bytes, from, carry, carried, to - from);
        readLine(carry, 0, length, endPosition - length);
    }

    private void readLine(byte[] bytes, int from, int to, long linePosition) {
        int first = from;
        while (first < to && (bytes[first] == ' ' || bytes[first] == '\t')) {
            first++;
        }
        if (first == to || bytes[first] == '#') {
            return;
        }
        int start = findStart(bytes, bytes[first] == '\\' ? behindTag(bytes, first, to) : first, to);
        if (start < 0) {
            issues.add(IssueKind.NOT_A_SENTENCE, lines, bytes, first, to);
            return;
        }
        long stampNanos = stamp.read(bytes, first, start, lines);
        while (start >= 0) {
            int next = readSentence(bytes, start, to, linePosition + (start - from), stampNanos);
            start = findStart(bytes, next, to);
        }
    }

    /** Reads the sentence that begins at start and returns the place from which to look for the next. */
    private int readSentence(byte[] bytes, int start, int to, long at, long stampNanos) {
        int star = find(bytes, (byte) '*', start + 1, to);
        int control = findControl(bytes, start + 1, star < 0 ? to : Math.min(to, star + 3));
        if (control >= 0) {
            issues.add(IssueKind.CONTROL_BYTES, lines, bytes, start, to);
            return star < 0 ? to : star + 1;
        }
        boolean complete = star >= 0 && star + 2 < to;
        if (complete && Checksum.fits(bytes, start + 1, star)) {
            sentence.set(bytes, start + 1, star);
            sink.take(sentence, lines, at, stampNanos);
            return star + 3;
        }
        int second = findStart(bytes, start + 1, star < 0 ? to : star);
        if (second >= 0) {
            issues.add(IssueKind.MERGED, lines, bytes, start, to);
            return second;
        }
        if (star < 0) {
            if (rule == ChecksumRule.OPTIONAL) {
                sentence.set(bytes, start + 1, to);
                sink.take(sentence, lines, at, stampNanos);
            } else {
                issues.add(IssueKind.NO_CHECKSUM, lines, bytes, start, to);
            }
            return to;
        }
        issues.add(IssueKind.BAD_CHECKSUM, lines, bytes, start, to);
        return star + 1;
    }

    private static int behindTag(byte[] bytes, int open, int to) {
        int close = find(bytes, (byte) '\\', open + 1, to);
        return close < 0 ? open : close + 1;
    }

    private static int findStart(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            if (bytes[i] == '$' || bytes[i] == '!') {
                return i;
            }
        }
        return -1;
    }

    private static int find(byte[] bytes, byte wanted, int from, int to) {
        for (int i = from; i < to; i++) {
            if (bytes[i] == wanted) {
                return i;
            }
        }
        return -1;
    }

    private static int findControl(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            if (bytes[i] >= 0 && bytes[i] < 0x20) {
                return i;
            }
        }
        return -1;
    }
}
