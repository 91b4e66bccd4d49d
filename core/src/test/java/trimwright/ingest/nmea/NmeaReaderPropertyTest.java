package trimwright.ingest.nmea;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.ingest.nmea.NmeaText.sentence;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.ingest.IngestResult;
import trimwright.ingest.Issues;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;

/** What must hold for any log. */
class NmeaReaderPropertyTest {
    private static final int MUTATED_LINES = 20_000;

    @Test
    void theSameBytesGiveTheSameResultHoweverTheyAreCut() {
        byte[] log = NmeaText.bytes(String.join("\r\n", lines(200, new Random(1))));
        IngestResult whole = NmeaReader.read(log, NmeaOptions.of("x"));
        Random random = new Random(2);
        for (int round = 0; round < 20; round++) {
            NmeaReader reader = new NmeaReader(NmeaOptions.of("x"));
            int most = round == 0 ? 1 : 1 + random.nextInt(300);
            for (int at = 0; at < log.length; ) {
                int size = Math.min(log.length - at, 1 + random.nextInt(most));
                reader.accept(log, at, at + size);
                at += size;
            }
            assertSame(whole, reader.finish());
        }
    }

    private static void assertSame(IngestResult expected, IngestResult actual) {
        assertEquals(expected.report().lines(), actual.report().lines());
        assertEquals(
                expected.report().issues().first(), actual.report().issues().first());
        BoatTrack one = NmeaText.track(expected);
        BoatTrack other = NmeaText.track(actual);
        assertEquals(one.groups().size(), other.groups().size());
        for (int g = 0; g < one.groups().size(); g++) {
            ChannelGroup a = one.groups().get(g);
            ChannelGroup b = other.groups().get(g);
            assertEquals(a.name(), b.name());
            assertArrayEquals(a.timesToArray(), b.timesToArray());
            for (int c = 0; c < a.channels().size(); c++) {
                assertEquals(a.channels().get(c).path(), b.channels().get(c).path());
                assertArrayEquals(
                        a.channels().get(c).toArray(), b.channels().get(c).toArray());
            }
        }
    }

    @Test
    void noMutationOfALogMakesTheReaderFail() {
        Random random = new Random(20260511);
        int lines = 0;
        while (lines < MUTATED_LINES) {
            List<String> log = lines(20, random);
            lines += log.size();
            byte[] bytes = mutated(NmeaText.bytes(String.join("\r\n", log)), random, log.size());
            NmeaReader reader = new NmeaReader(new NmeaOptions(
                    "x",
                    random.nextBoolean() ? null : 1_778_500_000_000_000_000L,
                    random.nextBoolean() ? ChecksumRule.REQUIRED : ChecksumRule.OPTIONAL));
            int cut = random.nextInt(bytes.length + 1);
            reader.accept(bytes, 0, cut);
            reader.accept(bytes, cut, bytes.length);
            if (reader.finish() instanceof IngestResult.Tracks tracks) {
                tracks.tracks().forEach(NmeaReaderPropertyTest::assertInRange);
            }
        }
    }

    /** About one change for each line; half of the changed lines get a fitting check value, so that fields are reached. */
    private static byte[] mutated(byte[] log, Random random, int changes) {
        byte[] bytes = log.clone();
        for (int i = 0; i < changes; i++) {
            int at = random.nextInt(bytes.length);
            switch (random.nextInt(4)) {
                case 0 -> bytes[at] = (byte) random.nextInt(256);
                case 1 -> bytes[at] = (byte) "$!*,\\-.0123456789ENSWAVM\r\n\0".charAt(random.nextInt(27));
                case 2 -> {
                    int from = random.nextInt(bytes.length);
                    int length = Math.min(random.nextInt(30), bytes.length - Math.max(from, at));
                    System.arraycopy(bytes, from, bytes, at, length);
                }
                default -> bytes[at] ^= (byte) (1 << random.nextInt(8));
            }
        }
        if (random.nextBoolean()) {
            repairChecks(bytes);
        }
        return bytes;
    }

    private static void repairChecks(byte[] bytes) {
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] != '$') {
                continue;
            }
            int sum = 0;
            int at = i + 1;
            while (at < bytes.length && bytes[at] != '*' && bytes[at] != '\n') {
                sum ^= bytes[at++];
            }
            if (at + 2 < bytes.length && bytes[at] == '*') {
                String hex = String.format(Locale.ROOT, "%02X", sum & 0xff);
                bytes[at + 1] = (byte) hex.charAt(0);
                bytes[at + 2] = (byte) hex.charAt(1);
            }
        }
    }

    private static void assertInRange(BoatTrack track) {
        for (ChannelGroup group : track.groups()) {
            for (Channel channel : group.channels()) {
                for (int i = 0; i < channel.size(); i++) {
                    assertTrue(!Double.isInfinite(channel.get(i)), channel.path());
                }
            }
        }
    }

    @Test
    void readingASentenceAllocatesNothing() {
        byte[] log = NmeaText.bytes(String.join("\r\n", lines(500, new Random(3))) + "\r\n");
        Issues issues = new Issues();
        NmeaDecoder decoder = new NmeaDecoder(issues);
        NmeaReading reading = new NmeaReading();
        long[] count = new long[1];
        NmeaScanner scanner = new NmeaScanner(issues, ChecksumRule.REQUIRED, (sentence, line, position, stamp) -> {
            count[0] += decoder.decode(sentence, line, reading) ? 1 : 0;
        });
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        for (int i = 0; i < 20; i++) {
            scanner.accept(log, 0, log.length);
        }
        count[0] = 0;
        long before = threads.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < 10; i++) {
            scanner.accept(log, 0, log.length);
        }
        long allocated = threads.getCurrentThreadAllocatedBytes() - before;
        assertTrue(count[0] > 10_000, count[0] + " sentences");
        // A few hundred bytes are the measurement's own.
        assertTrue(allocated < 2_000, allocated + " bytes for " + count[0] + " sentences");
    }

    private static List<String> lines(int seconds, Random random) {
        List<String> lines = new ArrayList<>();
        for (int second = 0; second < seconds; second++) {
            String time = String.format(Locale.ROOT, "12%02d%02d.00", second / 60, second % 60);
            lines.add(sentence(NmeaTrapsTest.rmcBody(time, "110526")));
            lines.add(sentence("GPGGA," + time + ",0906.452,S,14012.516,W,1,08,0.9,5.0,M,0.0,M,,"));
            lines.add(
                    sentence(String.format(Locale.ROOT, "WIMWV,%05.1f,R,%04.1f,N,A", random.nextDouble() * 360, 12.0)));
            lines.add(sentence("CCVWT,26.2,R,2.9,N,1.5,M,5.4,K"));
            lines.add(sentence("IIVHW,201.1,T,209.2,M,6.5,N,12.0,K"));
            lines.add(sentence("IIHDG,220,1.0,W,10,E"));
            lines.add(sentence("IIXDR,C,,C,AIRTEMP,A,-1.0,D,HEEL,A,2.9,D,TRIM,P,1.026,B,BARO,A,-3.9,D,RUDDER"));
            lines.add(sentence("GPZDA," + time + ",11,05,2026,00,00"));
            lines.add(sentence("HEROT,-3.5,A"));
            lines.add(sentence("GPVTG,220.86,T,,M,2.550,N,4.724,K,A"));
        }
        return lines;
    }
}
