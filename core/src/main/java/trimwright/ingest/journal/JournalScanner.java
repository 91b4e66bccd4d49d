package trimwright.ingest.journal;

import java.nio.ByteBuffer;

/**
 * Finds the records of a journal in bytes that come in pieces of any size. Memory is bounded. A journal ends where its
 * last whole record ends: what a crash left behind it is counted, not read. Reading stops at the first record that is
 * damaged, because nothing behind it can be placed.
 */
public final class JournalScanner {
    /** Takes each record as it is found. */
    public interface Sink {
        /** {@code bytes[from, to)} only hold during the call. */
        void take(RecordKind kind, int source, long arrivalNanos, byte[] bytes, int from, int to);
    }

    private final Sink sink;
    private final byte[] held = new byte[JournalText.BEFORE + JournalText.MOST_BYTES + JournalText.BEHIND];
    private int length;
    private boolean begun;
    private boolean damaged;
    private long records;
    private long unread;

    public JournalScanner(Sink sink) {
        this.sink = sink;
    }

    /** Reads on with {@code bytes[from, to)}. */
    public void accept(byte[] bytes, int from, int to) {
        int at = from;
        while (at < to && !damaged) {
            int taken = Math.min(to - at, wanted() - length);
            System.arraycopy(bytes, at, held, length, taken);
            length += taken;
            at += taken;
            if (length == wanted()) {
                step();
            }
        }
        unread += to - at;
    }

    /** Bytes needed before the next step: the first line, the fixed part of a record, or a whole one. */
    private int wanted() {
        if (!begun) {
            return JournalText.FIRST_LINE.length();
        }
        return length < JournalText.BEFORE ? JournalText.BEFORE : JournalText.BEFORE + bytes() + JournalText.BEHIND;
    }

    private int bytes() {
        return ByteBuffer.wrap(held).getInt(JournalText.BEFORE - 4);
    }

    private void step() {
        if (!begun) {
            begun = true;
            damaged = !java.util.Arrays.equals(
                    held, 0, length, JournalText.firstLine(), 0, JournalText.FIRST_LINE.length());
            clearUnless(damaged);
        } else if (length == JournalText.BEFORE) {
            // The length must be looked at before it is believed.
            damaged = bytes() < 0 || bytes() > JournalText.MOST_BYTES;
            unread += damaged ? length : 0;
        } else {
            give();
        }
    }

    private void give() {
        int end = JournalText.BEFORE + bytes();
        ByteBuffer record = ByteBuffer.wrap(held);
        RecordKind kind = RecordKind.find(held[0]);
        damaged = kind == null || record.getInt(end) != JournalText.check(held, 0, end);
        if (kind != null && !damaged) {
            records++;
            sink.take(kind, record.getShort(1) & 0xffff, record.getLong(3), held, JournalText.BEFORE, end);
        }
        clearUnless(damaged);
    }

    private void clearUnless(boolean isDamaged) {
        unread += isDamaged ? length : 0;
        length = 0;
    }

    /** Whole records so far. */
    public long records() {
        return records;
    }

    /** Bytes behind the last whole record: what a crash or damage cost. */
    public long unread() {
        return unread + (damaged ? 0 : length);
    }
}
