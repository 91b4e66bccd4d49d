package trimwright.ingest.nmea;

/** The check value of NMEA 0183: exclusive or of all bytes between the starting character and the star. */
public final class Checksum {
    private Checksum() {}

    /** Exclusive or of {@code bytes[from, to)}: 0 to 255. */
    public static int of(byte[] bytes, int from, int to) {
        int sum = 0;
        for (int i = from; i < to; i++) {
            sum ^= bytes[i];
        }
        return sum & 0xff;
    }

    /** Whether the two hex digits behind the star, in either case, are the check value of {@code bytes[from, star)}. */
    static boolean fits(byte[] bytes, int from, int star) {
        return of(bytes, from, star) == (hex(bytes[star + 1]) << 4 | hex(bytes[star + 2]));
    }

    private static int hex(byte digit) {
        if (digit >= '0' && digit <= '9') {
            return digit - '0';
        }
        if (digit >= 'A' && digit <= 'F') {
            return digit - 'A' + 10;
        }
        // No digit: larger than any check value, also when shifted.
        return digit >= 'a' && digit <= 'f' ? digit - 'a' + 10 : 1 << 16;
    }
}
