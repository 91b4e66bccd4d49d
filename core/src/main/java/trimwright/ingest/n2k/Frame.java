package trimwright.ingest.n2k;

/** One message of the bus, or one frame of a message that takes several; the same object is filled again and again. */
final class Frame {
    /** Bytes of the longest message: 6 in the first frame and 7 in each of 31 more. */
    static final int MOST_BYTES = 223;

    /** What the line says about time. */
    enum Stamp {
        NONE,
        /** ns of a day, without a date. */
        TIME_OF_DAY,
        /** ns since 1970 UTC. */
        FULL
    }

    Stamp stamp = Stamp.NONE;
    long nanos;
    int pgn;
    int source;
    int length;
    final byte[] data = new byte[MOST_BYTES];

    /**
     * Sets number and source from the identifier of a frame: 3 bits priority, page, format, specific, source. Formats
     * below 240 are sent to one address, which stands where others have the last byte of their number.
     */
    void setIdentifier(long id) {
        int page = (int) (id >> 24) & 3;
        int format = (int) (id >> 16) & 255;
        int specific = (int) (id >> 8) & 255;
        pgn = (page << 16) + (format << 8) + (format < 240 ? 0 : specific);
        source = (int) id & 255;
    }

    /** An unsigned number of that many bytes, least first; NaN where absent, an error or beyond the message's end. */
    double unsigned(int at, int bytes) {
        if (at + bytes > length) {
            return Double.NaN;
        }
        long value = raw(at, bytes);
        // The largest value says "not available", the one before it "error".
        return value >= (1L << 8 * bytes) - 2 ? Double.NaN : value;
    }

    /** A signed number of that many bytes, least first; NaN as above. */
    double signed(int at, int bytes) {
        if (at + bytes > length) {
            return Double.NaN;
        }
        int unused = 64 - 8 * bytes;
        long value = raw(at, bytes) << unused >> unused;
        return value >= (Long.MAX_VALUE >> unused) - 1 ? Double.NaN : value;
    }

    /** Bits of one byte, from the lowest; all ones beyond the message's end. */
    int bits(int at, int count) {
        int mask = (1 << count) - 1;
        return at < length ? data[at] & mask : mask;
    }

    private long raw(int at, int bytes) {
        long value = 0;
        for (int i = bytes - 1; i >= 0; i--) {
            value = value << 8 | (data[at + i] & 0xff);
        }
        return value;
    }
}
