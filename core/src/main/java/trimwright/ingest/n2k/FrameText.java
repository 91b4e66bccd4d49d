package trimwright.ingest.n2k;

import trimwright.ingest.TimeText;

/**
 * One line of text to one frame. Four spellings, told apart by their first bytes:
 *
 * <pre>
 * 2014-08-15T19:00:00.042Z,3,129029,160,255,43,87,a9,...   time, priority, number, source, destination, length, bytes
 * (1502984866.421964) can0 09F112CC#FF725A...              seconds since 1970, interface, identifier # bytes
 * 00:29:58.617 R 09FD020D FF A4 01 51                      time of day, received or transmitted, identifier, bytes
 * &lt;0x18eeff01&gt; [8] 05 a0 be 1c                             identifier, length, bytes; no time
 * </pre>
 */
final class FrameText {
    private final TimeText time = new TimeText();
    private byte[] bytes = new byte[0];
    private int at;
    private int to;

    /** Fills the frame from {@code line[from, end)}; false where that is no frame. */
    boolean read(byte[] line, int from, int end, Frame frame) {
        bytes = line;
        at = from;
        to = end;
        while (to > at && line[to - 1] <= ' ') {
            to--;
        }
        skipSpaces();
        frame.stamp = Frame.Stamp.NONE;
        frame.length = 0;
        if (to - at < 8) {
            return false;
        }
        if (bytes[at] == '(') {
            return readParenthesis(frame);
        }
        if (bytes[at] == '<') {
            return readAngle(frame);
        }
        return bytes[at + 2] == ':' ? readTimeOfDay(frame) : readCommas(frame);
    }

    private boolean readCommas(Frame frame) {
        int comma = indexOf(',');
        if (comma - at < 19) {
            return false;
        }
        long stamp = time.iso(bytes, at, comma);
        if (stamp == TimeText.NONE) {
            return false;
        }
        at = comma + 1;
        long priority = number();
        long pgn = number();
        long source = number();
        long destination = number();
        long length = number();
        // Loggers put lines of their own among them, with numbers beyond the 18 bits of the bus.
        if (priority < 0 || pgn < 0 || pgn >= 1 << 20 || source < 0 || source > 255 || destination < 0) {
            return false;
        }
        frame.stamp = Frame.Stamp.FULL;
        frame.nanos = stamp;
        frame.pgn = (int) pgn;
        frame.source = (int) source;
        return readBytes(frame, ',') && frame.length == length;
    }

    private boolean readParenthesis(Frame frame) {
        int close = indexOf(')');
        long stamp = close < 0 ? TimeText.NONE : TimeText.epoch(bytes, at + 1, close);
        int hash = indexOf('#');
        int begin = hash;
        while (begin > close && begin > 0 && bytes[begin - 1] != ' ') {
            begin--;
        }
        if (stamp == TimeText.NONE || hash < 0 || !readIdentifier(frame, begin, hash)) {
            return false;
        }
        frame.stamp = Frame.Stamp.FULL;
        frame.nanos = stamp;
        at = hash + 1;
        return readBytes(frame, (char) 0);
    }

    private boolean readTimeOfDay(Frame frame) {
        int space = indexOf(' ');
        if (space - at < 8 || bytes[at + 5] != ':') {
            return false;
        }
        long fraction = space - at > 9 && bytes[at + 8] == '.' ? TimeText.fraction(bytes, at + 9, space) : 0;
        long stamp = TimeText.timeOfDay(
                TimeText.digits(bytes, at, 2),
                TimeText.digits(bytes, at + 3, 2),
                TimeText.digits(bytes, at + 6, 2),
                fraction);
        at = space;
        skipSpaces();
        if (stamp == TimeText.NONE || at + 2 >= to || (bytes[at] != 'R' && bytes[at] != 'T') || bytes[at + 1] != ' ') {
            return false;
        }
        at += 2;
        skipSpaces();
        int end = at;
        while (end < to && bytes[end] != ' ') {
            end++;
        }
        if (!readIdentifier(frame, at, end)) {
            return false;
        }
        frame.stamp = Frame.Stamp.TIME_OF_DAY;
        frame.nanos = stamp;
        at = end;
        return readBytes(frame, ' ');
    }

    private boolean readAngle(Frame frame) {
        int close = indexOf('>');
        int begin = at + 1;
        if (close - begin > 2 && bytes[begin] == '0' && (bytes[begin + 1] | 0x20) == 'x') {
            begin += 2;
        }
        if (close < 0 || !readIdentifier(frame, begin, close)) {
            return false;
        }
        at = close + 1;
        skipSpaces();
        int bracket = indexOf(']');
        if (at >= to || bytes[at] != '[' || bracket < 0) {
            return false;
        }
        at++;
        long length = number(bracket);
        at = bracket + 1;
        return readBytes(frame, ' ') && frame.length == length;
    }

    private boolean readIdentifier(Frame frame, int from, int end) {
        // 29 bits: up to eight digits. Frames with the short identifier of eleven bits belong to another network.
        if (end - from < 7 || end - from > 8) {
            return false;
        }
        long id = 0;
        for (int i = from; i < end; i++) {
            int digit = Character.digit(bytes[i], 16);
            if (digit < 0) {
                return false;
            }
            id = id << 4 | digit;
        }
        frame.setIdentifier(id);
        return true;
    }

    /** Bytes of two hexadecimal digits, each with that separator before or behind it; 0: without any. */
    private boolean readBytes(Frame frame, char separator) {
        while (at < to) {
            if (separator == ' ') {
                skipSpaces();
            } else if (separator != 0 && bytes[at] == separator) {
                at++;
            }
            int high = at < to ? Character.digit(bytes[at], 16) : -1;
            int low = at + 1 < to ? Character.digit(bytes[at + 1], 16) : -1;
            if (high < 0 || low < 0 || frame.length == Frame.MOST_BYTES) {
                return false;
            }
            frame.data[frame.length++] = (byte) (high << 4 | low);
            at += 2;
        }
        return frame.length > 0;
    }

    /** The decimal number up to the next comma, and past it; -1 if it is none. */
    private long number() {
        int comma = indexOf(',');
        if (comma < 0) {
            return -1;
        }
        long value = number(comma);
        at = comma + 1;
        return value;
    }

    private long number(int end) {
        long value = end > at && end - at <= 9 ? 0 : -1;
        for (int i = at; i < end && value >= 0; i++) {
            value = TimeText.isDigit(bytes[i]) ? value * 10 + (bytes[i] - '0') : -1;
        }
        return value;
    }

    private int indexOf(char wanted) {
        for (int i = at; i < to; i++) {
            if (bytes[i] == wanted) {
                return i;
            }
        }
        return -1;
    }

    private void skipSpaces() {
        while (at < to && bytes[at] == ' ') {
            at++;
        }
    }
}
