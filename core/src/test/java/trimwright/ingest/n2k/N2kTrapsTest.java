package trimwright.ingest.n2k;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.ingest.n2k.N2kText.channel;
import static trimwright.ingest.n2k.N2kText.log;
import static trimwright.ingest.n2k.N2kText.read;
import static trimwright.ingest.n2k.N2kText.track;

import java.time.Instant;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;

/** The four spellings, messages in pieces, times, and what must not be taken for a value. */
class N2kTrapsTest {
    private static final long START = Instant.parse("2027-03-06T00:00:00Z").toEpochMilli() * 1_000_000L;
    /** 4.36 m/s at 2.27 rad, reference 2: apparent. */
    private static final String WIND = "00 B4 01 AC 58 FA FF FF";

    @Test
    void eachSpellingGivesTheSameWind() {
        // 130306 from device 42: priority 2, identifier 09FD022A.
        String[] lines = {
            "2027-03-06T10:00:00.000Z,2,130306,42,255,8,"
                    + WIND.replace(' ', ',').toLowerCase(Locale.ROOT),
            "2027-03-06-10:00:00.000,2,130306,42,255,8," + WIND.replace(' ', ','),
            "(1804327200.000000) can0 09FD022A#" + WIND.replace(" ", ""),
            "10:00:00.000 R 09FD022A " + WIND,
            "<0x09fd022a> [8] " + WIND.toLowerCase(Locale.ROOT),
        };
        for (String line : lines) {
            BoatTrack track = track(read(START, line));
            assertEquals(4.36, channel(track, Paths.AWS).get(0), 1e-12, line);
            assertEquals(2.27, channel(track, Paths.AWA).get(0), 1e-12, line);
            assertEquals("n2k-wind-apparent-42", track.groups().get(0).name());
        }
    }

    @Test
    void windsOfDifferentReferenceNeverMix() {
        BoatTrack track = track(read(
                null,
                "2027-03-06T10:00:00.000Z,2,130306,42,255,8,00,b4,01,ac,58,fa,ff,ff",
                "2027-03-06T10:00:00.100Z,2,130306,42,255,8,00,b4,01,00,10,fc,ff,ff",
                "2027-03-06T10:00:00.200Z,2,130306,42,255,8,00,b4,01,00,20,f8,ff,ff"));
        assertEquals(1, channel(track, Paths.AWA).size());
        assertEquals(1, channel(track, Paths.TWA_WATER).size());
        assertEquals(0.8192, channel(track, Paths.TWD).get(0), 1e-12);
    }

    @Test
    void aFixInPiecesIsPutTogether() {
        String fix =
                "37,2d,4b,10,6d,ff,19,00,7a,5b,64,9d,56,61,07,b0,7c,b2,ca,79,db,c0,00,20,6e,bf,02,00,00,00,00,10,fc,0c,46,"
                        + "00,82,00,34,12,00,00,ff";
        String[] bytes = fix.split(",");
        StringBuilder text = new StringBuilder();
        int at = 0;
        for (int frame = 0; at < bytes.length; frame++) {
            text.append("2027-03-06T10:00:00.00")
                    .append(frame)
                    .append("Z,3,129029,12,255,8,")
                    .append(String.format(Locale.ROOT, "%02x", 0x40 | frame));
            int room = 7;
            if (frame == 0) {
                text.append(",2b");
                room = 6;
            }
            for (int i = 0; i < room; i++) {
                text.append(',').append(at < bytes.length ? bytes[at] : "ff");
                at++;
            }
            text.append('\n');
        }
        BoatTrack track = track(read(null, text.toString().split("\n")));
        assertEquals(53.1801465, Math.toDegrees(channel(track, Paths.LATITUDE).get(0)), 1e-9);
        String[] lines = text.toString().split("\n");
        String broken = lines[2];
        lines[2] = "# lost";
        IngestResult result = read(null, lines);
        assertInstanceOf(IngestResult.Nothing.class, result, broken);
        assertEquals(1, result.report().issues().count(IssueKind.BROKEN_MESSAGE));
    }

    @Test
    void absentAndErrorAreNoValues() {
        IngestResult result = read(
                null,
                "2027-03-06T10:00:00.000Z,2,129025,42,255,8,ff,ff,ff,7f,fe,ff,ff,7f",
                "2027-03-06T10:00:00.000Z,2,128259,42,255,8,00,fe,ff,ff,ff,00,ff,ff");
        assertInstanceOf(IngestResult.Nothing.class, result);
        assertEquals(0, result.report().issues().total());
    }

    @Test
    void aLogWithoutDateNeedsAStartAndMidnightPasses() {
        String[] lines = {"23:59:59.900 R 09FD022A " + WIND, "00:00:00.100 R 09FD022A " + WIND};
        assertInstanceOf(IngestResult.NoDate.class, read(null, lines));
        BoatTrack track = track(read(START, lines));
        assertEquals(200_000_000L, track.endNanos() - track.startNanos());
    }

    @Test
    void messagesOfTimeDateALogWithoutStamps() {
        // 126992 with day 20883 (2027-03-06) and 36000 s, from device 12.
        IngestResult result = read(
                null,
                "<0x0df0100c> [8] 36 f0 93 51 00 2a 75 15",
                "<0x09fd022a> [8] " + WIND.toLowerCase(Locale.ROOT),
                "<0x0df0100c> [8] 37 f0 93 51 10 51 75 15");
        assertEquals(
                Instant.parse("2027-03-06T10:00:00.500Z").toEpochMilli() * 1_000_000L,
                track(result).startNanos());
        assertTrue(result.report().notes().contains(IngestNote.TIME_FROM_SENTENCES));
    }

    @Test
    void garbageIsCountedAndTheRestIsRead() {
        IngestResult result = read(
                null,
                "# a remark",
                "",
                "2027-03-06T10:00:00.000Z,2,130306,42,255,8,00,b4,01",
                "2027-03-06T10:00:00.000Z,2,130306,42,255,8,zz,b4,01,ac,58,fa,ff,ff",
                "no frame at all, but a line",
                "2027-03-06T10:00:00.000Z,2,130306,42,255,8,00,b4,01,ac,58,fa,ff,ff");
        assertEquals(3, result.report().issues().count(IssueKind.NOT_A_FRAME));
        assertEquals(1, channel(track(result), Paths.AWA).size());
    }

    @Test
    void howALogIsCutDoesNotMatter() {
        byte[] log = log(
                "(1804327200.000000) can0 09FD022A#00B401AC58FAFFFF",
                "(1804327200.500000) can0 09FD022A#00B501AC58FAFFFF");
        for (int cut = 0; cut <= log.length; cut++) {
            N2kReader reader = new N2kReader("Dunlin", null);
            reader.accept(log, 0, cut);
            reader.accept(log, cut, log.length);
            assertEquals(2, channel(track(reader.finish()), Paths.AWA).size(), "cut at " + cut);
        }
    }

    @Test
    void otherTextIsNotTakenForABus() {
        assertTrue(N2kReader.isLikely(log("# remark", "(1804327200.000000) can0 09FD022A#00B401AC58FAFFFF"), 60));
        byte[] table = log("time,awa,aws", "2027-03-06T10:00:00Z,31,12.5", "2027-03-06T10:00:01Z,30,12.7");
        assertFalse(N2kReader.isLikely(table, table.length));
    }
}
