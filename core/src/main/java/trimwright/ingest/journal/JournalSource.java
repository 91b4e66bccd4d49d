package trimwright.ingest.journal;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where bytes of a recording come from.
 *
 * @param protocol how they are to be read
 * @param framing whether a record ends a line
 * @param boat name of the boat, or empty where the data name it
 * @param address as given, with the sender behind it where several send to one address
 */
public record JournalSource(Protocol protocol, Framing framing, String boat, String address) {
    private static final List<Framing> FRAMINGS = List.of(Framing.values());

    /** How the bytes of a source are read. */
    public enum Protocol {
        NMEA0183,
        SIGNALK
    }

    /** Whether lines go on over the borders of records. */
    public enum Framing {
        /** A line may be cut anywhere. */
        STREAM,
        /** Each record is a packet of whole lines, whether or not the last one has an end. */
        PACKETS
    }

    /** As the journal holds it: four parts between tabs. */
    public byte[] toBytes() {
        return String.join("\t", protocol.name(), framing.name(), plain(boat), plain(address))
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String plain(String text) {
        return text.replace('\t', ' ');
    }

    /** The source in {@code bytes[from, to)}, or null where it is none that this program knows. */
    public static @Nullable JournalSource find(byte[] bytes, int from, int to) {
        String[] parts = new String(bytes, from, to - from, StandardCharsets.UTF_8).split("\t", -1);
        if (parts.length != 4) {
            return null;
        }
        for (Protocol protocol : Protocol.values()) {
            for (Framing framing : FRAMINGS) {
                if (protocol.name().equals(parts[0]) && framing.name().equals(parts[1])) {
                    return new JournalSource(protocol, framing, parts[2], parts[3]);
                }
            }
        }
        return null;
    }
}
