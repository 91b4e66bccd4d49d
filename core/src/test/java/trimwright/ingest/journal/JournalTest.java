package trimwright.ingest.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.Paths;

class JournalTest {
    private static final long SECOND = 1_000_000_000L;
    /** 2026-05-09T12:00:00Z. */
    private static final long NOON = 1_778_328_000L * SECOND;

    private final ByteArrayOutputStream journal = new ByteArrayOutputStream();

    private void put(RecordKind kind, int source, long nanos, byte[] bytes) {
        journal.writeBytes(JournalText.entry(kind, source, nanos, bytes, 0, bytes.length));
    }

    private void put(int source, long nanos, String text) {
        put(RecordKind.DATA, source, nanos, text.getBytes(StandardCharsets.US_ASCII));
    }

    private void declare(int source, JournalSource.Protocol protocol, JournalSource.Framing framing, String boat) {
        put(RecordKind.SOURCE, source, NOON, new JournalSource(protocol, framing, boat, "somewhere").toBytes());
    }

    private static String sentence(String body) {
        int sum = 0;
        for (byte b : body.getBytes(StandardCharsets.US_ASCII)) {
            sum ^= b;
        }
        return String.format(Locale.ROOT, "$%s*%02X", body, sum & 0xff);
    }

    private IngestResult read(int cutAt) {
        byte[] all = journal.toByteArray();
        JournalReader reader = new JournalReader("journal");
        int middle = Math.min(cutAt, all.length);
        reader.accept(all, 0, middle);
        reader.accept(all, middle, all.length);
        return reader.finish();
    }

    private static BoatTrack track(IngestResult result, String boat, String path) {
        return assertInstanceOf(IngestResult.Tracks.class, result).tracks().stream()
                .filter(track -> track.boat().equals(boat) && track.find(path) != null)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + path + " of " + boat));
    }

    private void record() {
        journal.writeBytes(JournalText.firstLine());
        declare(0, JournalSource.Protocol.NMEA0183, JournalSource.Framing.STREAM, "Dunlin");
        declare(1, JournalSource.Protocol.NMEA0183, JournalSource.Framing.PACKETS, "Dunlin");
        declare(2, JournalSource.Protocol.NMEA0183, JournalSource.Framing.STREAM, "Godwit");
        for (int i = 0; i < 30; i++) {
            // The recorder's clock is five seconds slow.
            long arrival = NOON + i * SECOND - 5 * SECOND;
            String time = String.format(Locale.ROOT, "1200%02d.00", i);
            String fix = sentence("GPRMC," + time + ",A,4000.000,N,02000.000,W,20.0,90.0,090526,,,A") + "\r\n";
            // A stream is cut inside its lines.
            put(0, arrival, fix.substring(0, 30));
            put(0, arrival + SECOND / 100, fix.substring(30));
            // A packet without a line end.
            put(1, arrival, sentence("WIMWV,0" + (30 + i) + ".0,R,25.0,N,A"));
            put(2, arrival, sentence("GPRMC," + time + ",A,4000.000,N,02000.000,W,11.0,90.0,090526,,,A") + "\r\n");
        }
        put(RecordKind.MARK, 0, NOON, "20\t".getBytes(StandardCharsets.US_ASCII));
        put(RecordKind.NOTE, 0, NOON, "event\tpractice".getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void eachSourceGoesToItsBoatAndOneWithoutTimeIsPlacedByArrivalOnTheSatellitesClock() {
        record();
        IngestResult result = read(0);
        Channel sog = track(result, "Dunlin", Paths.SOG).find(Paths.SOG);
        assertEquals(30, sog == null ? 0 : sog.size());
        assertEquals(1, track(result, "Godwit", Paths.SOG).groups().size());
        BoatTrack wind = track(result, "Dunlin", Paths.AWA);
        assertEquals(30, wind.groups().get(0).size());
        assertEquals(0, (wind.groups().get(0).timeNanos(0) - NOON) / 1e9, 0.02);
        assertEquals(29, (wind.groups().get(0).timeNanos(29) - NOON) / 1e9, 0.02);
        Channel angle = wind.find(Paths.AWA);
        assertEquals(Math.toRadians(59), angle == null ? Double.NaN : angle.get(29), 1e-12);
        assertEquals(
                0,
                result.report().issues().total(),
                () -> result.report().issues().counts().toString());
        assertTrue(result.report().notes().contains(IngestNote.TIME_FROM_ARRIVAL));
    }

    @Test
    void theSameJournalCutAnywhereReadsTheSame() {
        record();
        IngestResult whole = read(0);
        for (int cut = 1; cut < journal.size(); cut += 37) {
            IngestResult pieces = read(cut);
            assertEquals(whole.report().lines(), pieces.report().lines());
            assertEquals(whole.report().usable(), pieces.report().usable());
            assertEquals(0, pieces.report().issues().total());
        }
    }

    @Test
    void aJournalThatBreaksOffIsReadUpToItsLastWholeRecord() {
        record();
        byte[] all = journal.toByteArray();
        List<Integer> ends = new ArrayList<>();
        int[] at = new int[1];
        JournalScanner every = new JournalScanner((kind, source, nanos, bytes, from, to) -> ends.add(to - from));
        every.accept(all, 0, all.length);
        int end = JournalText.FIRST_LINE.length();
        for (int cut = end; cut < all.length; cut += 11) {
            int records = 0;
            int whole = JournalText.FIRST_LINE.length();
            while (records < ends.size() && whole + 19 + ends.get(records) <= cut) {
                whole += 19 + ends.get(records++);
            }
            at[0] = 0;
            JournalScanner scanner = new JournalScanner((kind, source, nanos, bytes, from, to) -> at[0]++);
            scanner.accept(all, 0, cut);
            assertEquals(records, at[0]);
            assertEquals(cut - whole, scanner.unread());
        }
    }

    @Test
    void nothingIsReadBehindADamagedRecord() {
        record();
        byte[] all = journal.toByteArray();
        byte[] damaged = all.clone();
        damaged[all.length / 2] = (byte) (damaged[all.length / 2] ^ 1);
        JournalReader reader = new JournalReader("journal");
        reader.accept(damaged, 0, damaged.length);
        IngestResult result = reader.finish();
        assertEquals(1, result.report().issues().count(IssueKind.BROKEN_OFF));
        assertTrue(
                result.report().usable() > 30 && result.report().usable() < 60,
                "" + result.report().usable());
        byte[] zeros = Arrays.copyOf(all, all.length + 4096);
        JournalReader padded = new JournalReader("journal");
        padded.accept(zeros, 0, zeros.length);
        assertEquals(90, padded.finish().report().usable());
    }
}
