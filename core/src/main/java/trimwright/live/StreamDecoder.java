package trimwright.live;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trimwright.ingest.Issues;
import trimwright.ingest.journal.JournalSource;
import trimwright.ingest.nmea.ChecksumRule;
import trimwright.ingest.nmea.NmeaDecoder;
import trimwright.ingest.nmea.NmeaLayout;
import trimwright.ingest.nmea.NmeaReading;
import trimwright.ingest.nmea.NmeaScanner;
import trimwright.ingest.nmea.NmeaSentence;
import trimwright.ingest.signalk.DeltaScanner;
import trimwright.ingest.signalk.SignalKReader;

/** From the bytes of one source of a recording to values, by the scanners and decoders that logs are read with. */
public final class StreamDecoder {
    private static final byte[] LINE_END = {'\n'};

    private final JournalSource source;
    private final Values values;
    private final Issues issues = new Issues();
    private final Bytes bytes;
    private final NmeaReading reading = new NmeaReading();
    private final NmeaDecoder decoder = new NmeaDecoder(issues);
    private final Map<Integer, List<String>> names = new HashMap<>();
    private long arrivalNanos;

    private interface Bytes {
        void accept(byte[] bytes, int from, int to);
    }

    public StreamDecoder(JournalSource source, Values values) {
        this.source = source;
        this.values = values;
        this.bytes = switch (source.protocol()) {
            case NMEA0183 -> new NmeaScanner(issues, ChecksumRule.REQUIRED, this::takeSentence)::accept;
            case SIGNALK -> new DeltaScanner(issues, this::takeDelta)::accept;
        };
    }

    /** Reads on. */
    public void accept(byte[] piece, long arrivedNanos) {
        arrivalNanos = arrivedNanos;
        bytes.accept(piece, 0, piece.length);
        if (source.framing() == JournalSource.Framing.PACKETS && piece.length > 0 && piece[piece.length - 1] != '\n') {
            bytes.accept(LINE_END, 0, 1);
        }
    }

    /** What could not be read so far. */
    public Issues issues() {
        return issues;
    }

    private void takeSentence(NmeaSentence sentence, long line, long position, long stampNanos) {
        if (!decoder.decode(sentence, line, reading)) {
            return;
        }
        NmeaLayout layout = reading.layout();
        List<String> paths = layout.paths();
        String name = name(reading.talker(), layout);
        for (int i = 0; i < paths.size(); i++) {
            values.take(source.boat(), name, paths.get(i), arrivalNanos, reading.value(i));
        }
    }

    /** Made once for each talker and layout. */
    private String name(int talker, NmeaLayout layout) {
        List<String> known = names.computeIfAbsent(talker, t -> new ArrayList<>());
        while (known.size() <= layout.ordinal()) {
            known.add("" + (char) (talker >> 8) + (char) (talker & 0xff) + "-"
                    + NmeaLayout.values()[known.size()].word() + " " + source.address());
        }
        return known.get(layout.ordinal());
    }

    private void takeDelta(
            String context, String device, long line, long timeNanos, List<String> paths, double[] found) {
        String boat = SignalKReader.boatOf(context, source.boat());
        String name = device.isEmpty() ? source.address() : device + " " + source.address();
        for (int i = 0; i < found.length; i++) {
            values.take(boat, name, paths.get(i), arrivalNanos, found[i]);
        }
    }
}
