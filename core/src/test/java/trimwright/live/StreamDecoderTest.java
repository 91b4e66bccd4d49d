package trimwright.live;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.ingest.journal.JournalSource;
import trimwright.track.Paths;

class StreamDecoderTest {
    private static final JournalSource SERVER =
            new JournalSource(JournalSource.Protocol.SIGNALK, JournalSource.Framing.STREAM, "Dunlin", "tcp://h:8375");

    private static byte[] speed(String source, double value) {
        return ("{\"context\":\"vessels.self\",\"updates\":[{" + source
                        + "\"values\":[{\"path\":\"navigation.speedOverGround\",\"value\":" + value + "}]}]}\r\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void devicesOfOneServerAreToldApart() {
        List<String> taken = new ArrayList<>();
        StreamDecoder decoder = new StreamDecoder(
                SERVER, (boat, source, path, nanos, value) -> taken.add(boat + " | " + source + " | " + value));
        decoder.accept(speed("\"$source\":\"gps.1\",", 7), 1);
        decoder.accept(speed("\"source\":{\"label\":\"bus\",\"src\":\"3\"},", 9), 2);
        decoder.accept(speed("", 8), 3);
        assertEquals(
                List.of(
                        "Dunlin | gps.1 tcp://h:8375 | 7.0",
                        "Dunlin | bus-3 tcp://h:8375 | 9.0",
                        "Dunlin | tcp://h:8375 | 8.0"),
                taken);
    }

    @Test
    void theFirstDeviceOfAPathStaysTheOneThatIsShown() {
        LiveBoat boat = new LiveBoat(null, null, null);
        StreamDecoder decoder =
                new StreamDecoder(SERVER, (name, source, path, nanos, value) -> boat.put(source, path, nanos, value));
        long now = 1_778_328_000_000_000_000L;
        for (int i = 0; i < 100; i++) {
            now += 100_000_000L;
            decoder.accept(speed("\"$source\":\"gps.1\",", 7 + i % 2 * 1e-3), now);
            decoder.accept(speed("\"$source\":\"gps.2\",", 9 + i % 2 * 1e-3), now + 1000);
            boat.advance(now + 1000);
            assertEquals(7, boat.figures().motion().speed(), 0.01, Paths.SOG);
        }
    }
}
