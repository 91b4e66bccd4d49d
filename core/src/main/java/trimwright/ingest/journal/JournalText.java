package trimwright.ingest.journal;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * Bytes of a journal: a first line that names the format, then records of kind (1 byte), source (2), time of arrival (8,
 * ns since 1970 UTC), length (4), so many bytes, and the CRC-32 of all of these (4); numbers with the high byte first.
 */
public final class JournalText {
    /** The first line of every journal. */
    public static final String FIRST_LINE = "trimwright journal/1\n";

    /** The most bytes of one record (chosen: a UDP packet has no more). */
    public static final int MOST_BYTES = 65_535;

    /** Sources that one journal can tell apart. */
    public static final int MOST_SOURCES = 65_536;

    static final int BEFORE = 1 + 2 + 8 + 4;
    static final int BEHIND = 4;

    private JournalText() {}

    /** What a new journal begins with. */
    public static byte[] firstLine() {
        return FIRST_LINE.getBytes(StandardCharsets.US_ASCII);
    }

    /** One record that holds {@code bytes[from, to)}. */
    public static byte[] entry(RecordKind kind, int source, long arrivalNanos, byte[] bytes, int from, int to) {
        if (to - from > MOST_BYTES || source < 0 || source >= MOST_SOURCES) {
            throw new IllegalArgumentException("a record of " + (to - from) + " bytes of source " + source);
        }
        ByteBuffer record = ByteBuffer.allocate(BEFORE + to - from + BEHIND);
        record.put(kind.letter()).putShort((short) source).putLong(arrivalNanos).putInt(to - from);
        record.put(bytes, from, to - from);
        record.putInt(check(record.array(), 0, record.position()));
        return record.array();
    }

    static int check(byte[] bytes, int from, int to) {
        CRC32 crc = new CRC32();
        crc.update(bytes, from, to - from);
        return (int) crc.getValue();
    }
}
