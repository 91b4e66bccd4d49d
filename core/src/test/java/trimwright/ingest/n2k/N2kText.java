package trimwright.ingest.n2k;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.IngestResult;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;

/** Small logs made and read in tests. */
final class N2kText {
    private N2kText() {}

    static byte[] log(String... lines) {
        return (String.join("\n", lines) + "\n").getBytes(StandardCharsets.ISO_8859_1);
    }

    static IngestResult read(@Nullable Long start, String... lines) {
        return N2kReader.read(log(lines), "Dunlin", start);
    }

    static BoatTrack track(IngestResult result) {
        return assertInstanceOf(IngestResult.Tracks.class, result).tracks().get(0);
    }

    static Channel channel(BoatTrack track, String path) {
        Channel channel = track.find(path);
        assertNotNull(channel, path);
        return channel;
    }
}
