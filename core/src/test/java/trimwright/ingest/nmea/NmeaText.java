package trimwright.ingest.nmea;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.IngestResult;
import trimwright.ingest.Issues;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;

/** Small logs made and read in tests. */
final class NmeaText {
    private NmeaText() {}

    /** The body between $ and * with its check value, worked out here and not by the program. */
    static String sentence(String body) {
        int sum = 0;
        for (byte b : body.getBytes(StandardCharsets.ISO_8859_1)) {
            sum ^= b;
        }
        return String.format(Locale.ROOT, "$%s*%02X", body, sum & 0xff);
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    static byte[] log(String... lines) {
        return bytes(String.join("\r\n", lines) + "\r\n");
    }

    static IngestResult read(String... lines) {
        return NmeaReader.read(log(lines), NmeaOptions.of("Dunlin"));
    }

    static BoatTrack track(IngestResult result) {
        return assertInstanceOf(IngestResult.Tracks.class, result).tracks().get(0);
    }

    static Channel channel(BoatTrack track, String path) {
        Channel channel = track.find(path);
        if (channel == null) {
            throw new AssertionError(path + " is not in the track, which has "
                    + track.groups().stream()
                            .flatMap(g -> g.channels().stream())
                            .map(Channel::path)
                            .toList());
        }
        return channel;
    }

    static Channel channel(IngestResult result, String path) {
        return channel(track(result), path);
    }

    /** What one line alone decodes to, or null. */
    static @Nullable Decoded decode(String line) {
        Issues issues = new Issues();
        NmeaReading reading = new NmeaReading();
        List<Decoded> found = new ArrayList<>();
        NmeaDecoder decoder = new NmeaDecoder(issues);
        NmeaScanner scanner = new NmeaScanner(issues, ChecksumRule.REQUIRED, (sentence, number, position, stamp) -> {
            boolean any = decoder.decode(sentence, number, reading);
            double[] values = new double[reading.layout().paths().size()];
            for (int i = 0; i < values.length; i++) {
                values[i] = any ? reading.value(i) : Double.NaN;
            }
            found.add(new Decoded(reading.layout(), values, reading.timeOfDayNanos(), stamp, issues));
        });
        byte[] bytes = bytes(line);
        scanner.accept(bytes, 0, bytes.length);
        scanner.end();
        return found.isEmpty() ? null : found.get(0);
    }

    /** As {@link #decode}, for a line that must hold a sentence. */
    static Decoded decoded(String line) {
        Decoded decoded = decode(line);
        if (decoded == null) {
            throw new AssertionError("no sentence in " + line);
        }
        return decoded;
    }

    static final class Decoded {
        final NmeaLayout layout;
        final double[] values;
        final long timeOfDayNanos;
        final long stampNanos;
        final Issues issues;

        Decoded(NmeaLayout layout, double[] values, long timeOfDayNanos, long stampNanos, Issues issues) {
            this.layout = layout;
            this.values = values;
            this.timeOfDayNanos = timeOfDayNanos;
            this.stampNanos = stampNanos;
            this.issues = issues;
        }

        double value(String path) {
            return values[layout.paths().indexOf(path)];
        }
    }
}
