package trimwright.recording;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Sentences made in tests. */
final class NmeaBytes {
    private NmeaBytes() {}

    /** The body between $ and * with its check value, worked out here and not by the program, and a line end. */
    static byte[] of(String body) {
        int sum = 0;
        for (byte b : body.getBytes(StandardCharsets.US_ASCII)) {
            sum ^= b;
        }
        return String.format(Locale.ROOT, "$%s*%02X\r\n", body, sum & 0xff).getBytes(StandardCharsets.US_ASCII);
    }
}
