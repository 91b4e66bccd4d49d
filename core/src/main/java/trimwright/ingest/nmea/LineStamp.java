package trimwright.ingest.nmea;

import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.ingest.TimeText;

/**
 * The time that a logger put before a sentence: an ISO date and time, seconds or milliseconds since 1970, or the key c
 * of a TAG block (seconds or milliseconds; gpsd, "AIVDM/AIVDO protocol decoding", key gpsd-aivdm).
 */
final class LineStamp {
    private final Issues issues;
    private final TimeText text = new TimeText();
    private boolean sawUnzoned;

    LineStamp(Issues issues) {
        this.issues = issues;
    }

    /** Whether some stamp had no zone. */
    boolean sawUnzoned() {
        return sawUnzoned;
    }

    /** The stamp in {@code bytes[from, to)}, all that stands before the sentence; {@link TimeText#NONE} without one. */
    long read(byte[] bytes, int from, int to, long line) {
        int end = to;
        int start = from;
        long tag = TimeText.NONE;
        // A TAG block stands directly before the sentence: \...*hh\$...
        if (end - start >= 2 && bytes[end - 1] == '\\') {
            int open = end - 2;
            while (open > start && bytes[open] != '\\') {
                open--;
            }
            if (bytes[open] == '\\') {
                tag = readTag(bytes, open + 1, end - 1, line);
                end = open;
            }
        }
        while (start < end && isEdge(bytes[start])) {
            start++;
        }
        while (end > start && isEdge(bytes[end - 1])) {
            end--;
        }
        if (start == end) {
            return tag;
        }
        long stamp = TimeText.epoch(bytes, start, end);
        if (stamp == TimeText.NONE) {
            stamp = text.iso(bytes, start, end);
            sawUnzoned |= stamp != TimeText.NONE && !text.hadZone();
        }
        return stamp == TimeText.NONE ? tag : stamp;
    }

    /** What loggers put round a stamp. */
    private static boolean isEdge(byte b) {
        return b == ' ' || b == '\t' || b == '(' || b == ')' || b == '[' || b == ']' || b == ',' || b == ';'
                || b == ':';
    }

    private long readTag(byte[] bytes, int from, int to, long line) {
        int star = to - 3;
        if (star < from || bytes[star] != '*' || !Checksum.fits(bytes, from, star)) {
            issues.add(IssueKind.BAD_TAG, line, bytes, from - 1, to + 1);
            return TimeText.NONE;
        }
        int field = from;
        while (field < star) {
            int end = field;
            while (end < star && bytes[end] != ',') {
                end++;
            }
            // The key ends at the first colon; a text may hold more of them.
            if (end - field > 2 && (bytes[field] == 'c' || bytes[field] == 'C') && bytes[field + 1] == ':') {
                return TimeText.epoch(bytes, field + 2, end);
            }
            field = end + 1;
        }
        return TimeText.NONE;
    }
}
