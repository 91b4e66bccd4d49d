package trimwright.ingest;

import java.util.Arrays;

/**
 * Cuts bytes that come in pieces of any size into lines, with LF, CR LF or CR behind each. Memory is bounded: of a line
 * longer than the longest that is allowed nothing is kept, and it is counted as {@link IssueKind#TOO_LONG}.
 */
public final class LineCutter {
    /** Takes the lines. */
    public interface Sink {
        /**
         * @param bytes hold the line in {@code [from, to)}, without its end; valid only during the call
         * @param line from 1
         */
        void take(byte[] bytes, int from, int to, long line);
    }

    private static final int FIRST_SIZE = 256;

    private final int longest;
    private final Issues issues;
    private final Sink sink;
    private byte[] kept = new byte[FIRST_SIZE];
    private int length;
    private boolean tooLong;
    private boolean afterCr;
    private long lines;

    /** @param longest bytes of a line that is still taken */
    public LineCutter(int longest, Issues issues, Sink sink) {
        this.longest = longest;
        this.issues = issues;
        this.sink = sink;
    }

    /** Reads on with {@code bytes[from, to)}. */
    public void accept(byte[] bytes, int from, int to) {
        int begin = from;
        for (int i = from; i < to; i++) {
            byte b = bytes[i];
            if (b == '\n' && afterCr && length == 0 && i == begin) {
                begin = i + 1;
            } else if (b == '\n' || b == '\r') {
                finish(bytes, begin, i);
                begin = i + 1;
            }
            afterCr = b == '\r';
        }
        keep(bytes, begin, to);
    }

    /** The input is at its end; a last line may lack its line end. */
    public void end() {
        if (length > 0 || tooLong) {
            finish(kept, 0, 0);
        }
    }

    /** Lines so far. */
    public long lines() {
        return lines;
    }

    private void finish(byte[] bytes, int from, int to) {
        lines++;
        if (length == 0 && !tooLong && to - from <= longest) {
            sink.take(bytes, from, to, lines);
            return;
        }
        keep(bytes, from, to);
        if (tooLong) {
            issues.add(IssueKind.TOO_LONG, lines, "");
        } else {
            sink.take(kept, 0, length, lines);
        }
        length = 0;
        tooLong = false;
    }

    private void keep(byte[] bytes, int from, int to) {
        int more = to - from;
        if (tooLong || length + more > longest) {
            tooLong = true;
            length = 0;
            return;
        }
        if (length + more > kept.length) {
            kept = Arrays.copyOf(kept, Math.max(length + more, 2 * kept.length));
        }
        System.arraycopy(bytes, from, kept, length, more);
        length += more;
    }
}
