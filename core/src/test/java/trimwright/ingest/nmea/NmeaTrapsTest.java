package trimwright.ingest.nmea;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.ingest.nmea.NmeaText.channel;
import static trimwright.ingest.nmea.NmeaText.decode;
import static trimwright.ingest.nmea.NmeaText.decoded;
import static trimwright.ingest.nmea.NmeaText.read;
import static trimwright.ingest.nmea.NmeaText.sentence;
import static trimwright.ingest.nmea.NmeaText.track;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.track.Quality;

/** What real logs get wrong, one test each. */
class NmeaTrapsTest {
    private static final double DEGREE = Math.PI / 180;
    private static final double KNOT = 1852.0 / 3600.0;

    @Test
    void nulBytesDoNotShowInTheChecksumButInTheLine() {
        String broken = sentence("IIMWV,218,T,18.9,N,A").replace("218", "2" + "\0".repeat(300) + "18");
        IngestResult result = read(rmc(0), broken, sentence("IIMWV,219,T,18.9,N,A"), rmc(1));
        assertEquals(1, result.report().issues().count(IssueKind.CONTROL_BYTES));
        assertEquals(2, result.report().issues().first().get(0).line());
        assertEquals(1, channel(result, Paths.TWA_WATER).size());
    }

    @Test
    void aBadNumberUnderAGoodChecksumCostsItsGroupOnly() {
        NmeaText.Decoded xdr = decoded(
                sentence("IIXDR,C,C,10.7,C,AIRTEMP,A,0.5,D,HEEL,A,-1.-3,D,TRIM,P,1.026,B,BARO,A,A,-4.-3,D,RUDDER"));
        assertEquals(0.5 * DEGREE, xdr.value(Paths.ROLL), 1e-15);
        assertEquals(102_600, xdr.value(Paths.AIR_PRESSURE), 1e-9);
        assertTrue(Double.isNaN(xdr.value(Paths.PITCH)));
        assertTrue(Double.isNaN(xdr.value(Paths.RUDDER)));
        assertTrue(Double.isNaN(xdr.value(Paths.AIR_TEMPERATURE)));
        assertEquals(3, xdr.issues.count(IssueKind.BAD_NUMBER));
        NmeaText.Decoded vhw = decoded(sentence("IIVHW,,,1-2,M,6.5,N,,"));
        assertTrue(Double.isNaN(vhw.value(Paths.HEADING_MAGNETIC)));
        assertEquals(6.5 * KNOT, vhw.value(Paths.STW), 1e-15);
    }

    @Test
    void aSentenceThatBeginsInsideAnotherIsRead() {
        String line = "$GPGLL,4736.36271,N,00315.4964" + sentence("IIMWV,041,R,10.0,N,A");
        IngestResult result = read(rmc(0), line, rmc(1));
        assertEquals(1, result.report().issues().count(IssueKind.MERGED));
        assertEquals(10 * KNOT, channel(result, Paths.AWS).get(0), 1e-12);
        IngestResult both = read(rmc(0) + sentence("IIHDM,10,M"), rmc(1));
        assertEquals(0, both.report().issues().total());
        assertEquals(1, channel(both, Paths.HEADING_MAGNETIC).size());
    }

    @Test
    void windWithoutStatusAndNumericTalkersAreRead() {
        NmeaText.Decoded mwv = decoded("$24MWV,88.8,R,0.36,N*5B");
        assertEquals(88.8 * DEGREE, mwv.value(Paths.AWA), 1e-15);
        assertEquals(0, mwv.issues.total());
        assertTrue(Double.isNaN(decoded(sentence("IIMWV,88.8,R,0.36,N,V")).value(Paths.AWA)));
    }

    @Test
    void theUnitLetterIsPartOfTheValue() {
        assertEquals(3.6 / 3.6, decoded(sentence("WIMWV,214.8,R,3.6,K,A")).value(Paths.AWS), 1e-15);
        assertEquals(3.6, decoded(sentence("WIMWV,214.8,R,3.6,M,A")).value(Paths.AWS), 1e-15);
        assertEquals(3.6 * KNOT, decoded(sentence("WIMWV,214.8,R,3.6,N,A")).value(Paths.AWS), 1e-15);
        assertEquals(3.6 * 0.44704, decoded(sentence("WIMWV,214.8,R,3.6,S,A")).value(Paths.AWS), 1e-15);
        assertTrue(Double.isNaN(decoded(sentence("WIMWV,214.8,R,3.6,,A")).value(Paths.AWS)));
    }

    @Test
    void linesOverTheStandardLengthAreWhole() {
        String names = ",C,20.0,C,X".repeat(60);
        NmeaText.Decoded xdr = decoded(sentence("IIXDR,A,3.0,D,HEEL" + names + ",A,-2.0,D,TRIM"));
        assertEquals(-2 * DEGREE, xdr.value(Paths.PITCH), 1e-15);
    }

    @Test
    void emptyFieldsAreAbsentAndNotZero() {
        NmeaText.Decoded vhw = decoded(sentence("IIVHW,,T,,M,06.11,N,,"));
        assertTrue(Double.isNaN(vhw.value(Paths.HEADING)));
        assertTrue(Double.isNaN(vhw.value(Paths.HEADING_MAGNETIC)));
        assertEquals(6.11 * KNOT, vhw.value(Paths.STW), 1e-15);
        assertEquals(0, vhw.issues.total());
        IngestResult result = read(rmc(0), sentence("GPHDT,,T"), sentence("GPZDA,120000.5,,,,,"), rmc(1));
        assertEquals(0, result.report().issues().total());
        assertNull(track(result).find(Paths.HEADING));
        NmeaText.Decoded half = decoded(sentence("GPGLL,4736.36271,N,,W,120000,A,A"));
        assertTrue(Double.isNaN(half.value(Paths.LATITUDE)));
    }

    @Test
    void aPositionOfZeroZeroIsMarked() {
        IngestResult result = read(sentence("GPRMC,120000,A,0000.000,N,00000.000,E,0.0,0.0,110526,,,A"), rmc(1));
        assertEquals(Quality.OUT_OF_RANGE, channel(result, Paths.LATITUDE).quality(0));
        assertEquals(Quality.GOOD, channel(result, Paths.LATITUDE).quality(1));
    }

    @Test
    void anImpossibleDateLeavesTheOneBefore() {
        IngestResult result =
                read(rmc(0), sentence("GPRMC,120001,A,0906.452,S,14012.516,W,06.6,227,000000,,,A"), rmc(2));
        assertEquals(1, result.report().issues().count(IssueKind.BAD_DATE));
        ChannelGroup group = groupOf(result, Paths.SOG);
        assertEquals(3, group.size());
        assertEquals(nanos("2026-05-11T12:00:01Z"), group.timeNanos(1));
        assertEquals(
                1,
                read(rmc(0), sentence("GPRMC,120001,A,0906.4,S,14012.5,W,06.6,227,310226,,,A"), rmc(2))
                        .report()
                        .issues()
                        .count(IssueKind.BAD_DATE));
    }

    @Test
    void twoDigitYearsTakeTheirCenturyFromTheLogOrFromThePivot() {
        assertEquals(nanos("2079-05-11T12:00:00Z"), firstTime(sentence(rmcBody("120000", "110579"))));
        assertEquals(nanos("1980-05-11T12:00:00Z"), firstTime(sentence(rmcBody("120000", "110580"))));
        IngestResult assumed = read(sentence(rmcBody("120000", "110579")));
        assertTrue(assumed.report().notes().contains(IngestNote.CENTURY_ASSUMED));
        IngestResult told = read(sentence(rmcBody("120000", "110585")), sentence("GPZDA,120001,11,05,2085,00,00"));
        assertTrue(told.report().notes().contains(IngestNote.CENTURY_FROM_LOG));
        assertEquals(nanos("2085-05-11T12:00:00Z"), track(told).startNanos());
    }

    @Test
    void weekCyclesAreNeitherGuessedNorLeftWhereTheUserKnowsBetter() {
        // A true log of 2010 stays in 2010 (a decoder was seen to move it by 1024 weeks to 2030).
        assertEquals(nanos("2010-11-21T22:07:12Z"), firstTime(sentence(rmcBody("220712", "211110"))));
        byte[] early = NmeaText.log(sentence(rmcBody("120000", "250906")), sentence(rmcBody("120001", "250906")));
        IngestResult result = NmeaReader.read(early, NmeaOptions.of("x").withStart(nanos("2026-05-11T11:59:00Z")));
        assertEquals(nanos("2026-05-11T12:00:00Z"), track(result).startNanos());
        assertEquals(1, result.report().issues().count(IssueKind.DATE_CYCLE));
        IngestResult other = NmeaReader.read(early, NmeaOptions.of("x").withStart(nanos("2024-05-11T11:59:00Z")));
        assertEquals(nanos("2006-09-25T12:00:00Z"), track(other).startNanos());
        assertTrue(other.report().notes().contains(IngestNote.START_NOT_USED));
    }

    @Test
    void aLeapSecondIsHeldInsideItsMinute() {
        assertEquals(86_399_999_000_000L, decoded(sentence(rmcBody("235960", "311216"))).timeOfDayNanos);
        IngestResult result = read(
                sentence(rmcBody("235959", "311216")),
                sentence(rmcBody("235960", "311216")),
                sentence(rmcBody("000000", "010117")));
        assertEquals(3, groupOf(result, Paths.SOG).size());
        assertEquals(1, decoded(sentence(rmcBody("235961", "311216"))).issues.count(IssueKind.BAD_NUMBER));
    }

    @Test
    void minutesHaveAnyNumberOfDecimals() {
        double expected = (44 + 4.1 / 60) * DEGREE;
        for (String minutes : List.of("4404.1", "4404.100", "4404.1000", "4404.10000", "4404.1000000")) {
            assertEquals(
                    expected,
                    decoded(sentence("GPGLL," + minutes + ",N,12118.8,W,001037,A,A"))
                            .value(Paths.LATITUDE),
                    1e-15,
                    minutes);
        }
        assertEquals(
                1,
                decoded(sentence("GPGLL,4475.1,N,12118.8,W,001037,A,A")).issues.count(IssueKind.IMPOSSIBLE_VALUE));
    }

    @Test
    void twoReceiversUnderOneTalkerAreKeptApart() {
        List<String> lines = new ArrayList<>();
        for (int second = 0; second < 30; second++) {
            lines.add(sentence(rmcBody(time(second, ".0"), "110526").replace("0906.452", "0906.100")));
            // The other one is 0.4 s behind.
            lines.add(sentence(rmcBody(time(second - 1, ".6"), "110526").replace("0906.452", "0907.900")));
        }
        IngestResult result = read(lines.toArray(String[]::new));
        assertTrue(result.report().notes().contains(IngestNote.DEVICES_INTERLEAVED));
        Channel first = channel(result, Paths.LATITUDE);
        Channel second = channel(result, Paths.LATITUDE + "@gp-rmc-2");
        assertEquals(30, first.size());
        assertEquals(30, second.size());
        for (int i = 0; i < 30; i++) {
            assertEquals(-(9 + 6.1 / 60) * DEGREE, first.get(i), 1e-12);
            assertEquals(-(9 + 7.9 / 60) * DEGREE, second.get(i), 1e-12);
        }
        assertEquals(0, result.report().issues().count(IssueKind.TIME_NOT_RISING));
    }

    @Test
    void computedAndMeasuredWindAreNeverMixedNorAreRandT() {
        List<String> lines = new ArrayList<>();
        for (int second = 0; second < 20; second++) {
            lines.add(rmc(second));
            lines.add(sentence("IIMWV,040,R,10.0,N,A"));
            lines.add(sentence("IIMWV,060,T,8.0,N,A"));
            lines.add(sentence("CCMWV,100,R,20.0,N,A"));
            lines.add(sentence("CCMWV,120,T,16.0,N,A"));
            lines.add(sentence("CCMWD,120,T,110,M,16.0,N,8.2,M"));
        }
        IngestResult result = read(lines.toArray(String[]::new));
        assertTrue(result.report().notes().contains(IngestNote.COMPUTED_VALUES_APART));
        assertAll(channel(result, Paths.AWA), 40 * DEGREE);
        assertAll(channel(result, Paths.TWA_WATER), 60 * DEGREE);
        assertAll(channel(result, Paths.AWA + "@cc-mwv-r"), 100 * DEGREE);
        assertAll(channel(result, Paths.TWS + "@cc-mwv-t"), 16 * KNOT);
        assertAll(channel(result, Paths.TWD + "@cc-mwd"), 120 * DEGREE);
        assertNull(track(result).find(Paths.TWD));
    }

    @Test
    void sentencesWithoutTimeLieBetweenThoseThatHaveOneAndRise() {
        List<String> lines = new ArrayList<>();
        for (int second = 0; second < 10; second++) {
            lines.add(rmc(second));
            for (int i = 0; i < 9; i++) {
                lines.add(sentence(String.format(Locale.ROOT, "IIHDG,%03d,,,,", 10 * second + i)));
            }
        }
        lines.add(rmc(10));
        ChannelGroup group = groupOf(read(lines.toArray(String[]::new)), Paths.HEADING_MAGNETIC);
        assertEquals(90, group.size());
        for (int i = 0; i < 90; i++) {
            double second = (group.timeNanos(i) - nanos("2026-05-11T12:00:00Z")) / 1e9;
            assertEquals(i / 9, (int) second, "sample " + i + " at " + second);
        }
    }

    @Test
    void theLogsOwnStampsAreKept() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            lines.add(
                    String.format(Locale.ROOT, "2023-09-02T12:41:%02d.168370+00:00\t%s", i, sentence("IIHDG,100,,,,")));
        }
        IngestResult result = read(lines.toArray(String[]::new));
        ChannelGroup group = groupOf(result, Paths.HEADING_MAGNETIC);
        assertTrue(result.report().notes().contains(IngestNote.TIME_FROM_STAMPS));
        assertEquals(nanos("2023-09-02T12:41:07.168370Z"), group.timeNanos(7));
        IngestResult tagged = read(tagged(31), tagged(32), tagged(33));
        assertEquals(
                1_699_169_532_000_000_000L,
                groupOf(tagged, Paths.HEADING_MAGNETIC).timeNanos(1));
        IngestResult millis = read("\\c:1564827317000*" + check("c:1564827317000") + "\\" + sentence("IIHDG,100,,,,"));
        assertEquals(1_564_827_317_000_000_000L, track(millis).startNanos());
    }

    private static String tagged(int second) {
        String body = "s:a:b,c:" + (1_699_169_500 + second);
        return "\\" + body + "*" + check(body) + "\\" + sentence("IIHDG,100,,,,");
    }

    private static String check(String body) {
        String whole = sentence(body);
        return whole.substring(whole.length() - 2);
    }

    @Test
    void aStaleComputedWindIsMarkedFrozen() {
        List<String> lines = new ArrayList<>();
        for (int second = 0; second < 200; second++) {
            lines.add(rmc(second));
            lines.add(sentence("IIVWT,0.0,L,0.0,N,0.0,M,0.0,K"));
            lines.add(sentence(String.format(Locale.ROOT, "IIMWV,%03d,R,10.%d,N,A", 40 + second % 3, second % 7)));
        }
        IngestResult result = read(lines.toArray(String[]::new));
        assertEquals(Quality.FROZEN, channel(result, Paths.TWS).quality(100));
        assertEquals(Quality.GOOD, channel(result, Paths.AWS).quality(100));
    }

    @Test
    void anyLocaleReadsTheSame() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertEquals(41.1 * DEGREE, decoded("$WIMWV,041.1,R,01.0,N,A*16").value(Paths.AWA), 1e-15);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void commentsLineEndsPrefixesAndMissingChecksums() {
        for (String end : List.of("\n", "\r", "\r\n")) {
            String text =
                    String.join(end, "# a log", "", rmc(0), "  ", "any words " + sentence("IIHDM,10,M"), rmc(1)) + end;
            IngestResult result = NmeaReader.read(NmeaText.bytes(text), NmeaOptions.of("x"));
            assertEquals(0, result.report().issues().total());
            assertEquals(6, result.report().lines());
            assertEquals(1, channel(result, Paths.HEADING_MAGNETIC).size());
        }
        assertNotNull(decode("$IIVWR,024,L,018,N,,,,*5e"));
        assertNull(decode("$IIVWR,024,L,018,N,,,,"));
        byte[] bare = NmeaText.log("$" + rmcBody("120000", "110526"));
        assertInstanceOf(IngestResult.Nothing.class, NmeaReader.read(bare, NmeaOptions.of("x")));
        assertInstanceOf(
                IngestResult.Tracks.class, NmeaReader.read(bare, new NmeaOptions("x", null, ChecksumRule.OPTIONAL)));
    }

    @Test
    void aLogWithoutDateNeedsAStart() {
        byte[] log = NmeaText.log(
                sentence("GPGLL,4404.14,N,12118.85,W,235959,A,A"), sentence("GPGLL,4404.15,N,12118.85,W,000001,A,A"));
        assertInstanceOf(IngestResult.NoDate.class, NmeaReader.read(log, NmeaOptions.of("x")));
        IngestResult result = NmeaReader.read(log, NmeaOptions.of("x").withStart(nanos("2026-05-11T23:30:00Z")));
        assertEquals(nanos("2026-05-11T23:59:59Z"), track(result).startNanos());
        assertEquals(nanos("2026-05-12T00:00:01Z"), track(result).endNanos());
        assertTrue(result.report().notes().contains(IngestNote.DATE_FROM_START));
    }

    @Test
    void daysRollOverAtMidnightWithoutADateInEverySentence() {
        IngestResult result = read(
                sentence("GPGLL,4404.14,N,12118.85,W,235958,A,A"),
                sentence(rmcBody("235959", "311225")),
                sentence("GPGLL,4404.14,N,12118.85,W,000000,A,A"),
                sentence("GPGLL,4404.14,N,12118.85,W,000001,A,A"));
        ChannelGroup group = groupOf(result, Paths.LATITUDE);
        assertEquals("gp-gll", group.name());
        assertEquals(nanos("2025-12-31T23:59:58Z"), group.timeNanos(0));
        assertEquals(nanos("2026-01-01T00:00:01Z"), group.timeNanos(2));
    }

    @Test
    void aSingleWrongTimeIsLeftOutAndAStepBackIsReported() {
        IngestResult outlier = read(rmc(0), rmc(1), sentence(rmcBody("220002", "110526")), rmc(3), rmc(4));
        assertEquals(1, outlier.report().issues().count(IssueKind.CLOCK_OUTLIER));
        assertEquals(4, groupOf(outlier, Paths.SOG).size());
        List<String> lines = new ArrayList<>();
        for (int second = 600; second < 660; second++) {
            lines.add(rmc(second));
        }
        for (int second = 0; second < 640; second++) {
            lines.add(rmc(second));
        }
        IngestResult step = read(lines.toArray(String[]::new));
        assertEquals(1, step.report().issues().count(IssueKind.CLOCK_STEP));
        assertEquals(
                61,
                step.report().issues().first().stream()
                        .filter(issue -> issue.kind() == IssueKind.CLOCK_STEP)
                        .findFirst()
                        .orElseThrow()
                        .line());
        // The longer stretch keeps its 640 s; of the shorter the last 20 s lie outside it.
        assertEquals(660, groupOf(step, Paths.SOG).size());
    }

    @Test
    void aPauseIsNotFilledWithTheLinesAroundIt() {
        List<String> lines = new ArrayList<>();
        for (int second = 0; second < 40; second++) {
            lines.add(rmc(second < 20 ? second : second + 3600));
            for (int i = 0; i < 9; i++) {
                lines.add(sentence("IIHDG,100,,,,"));
            }
        }
        ChannelGroup group = groupOf(read(lines.toArray(String[]::new)), Paths.HEADING_MAGNETIC);
        long pauseBegins = nanos("2026-05-11T12:00:22Z");
        long pauseEnds = nanos("2026-05-11T13:00:20Z");
        for (int i = 0; i < group.size(); i++) {
            assertFalse(group.timeNanos(i) > pauseBegins && group.timeNanos(i) < pauseEnds);
        }
    }

    @Test
    void hugeLinesAndOldCourseSentences() {
        byte[] chunk = new byte[1 << 16];
        java.util.Arrays.fill(chunk, (byte) 'A');
        NmeaReader reader = new NmeaReader(NmeaOptions.of("x"));
        for (int i = 0; i < 200; i++) {
            reader.accept(chunk, 0, chunk.length);
        }
        byte[] rest = NmeaText.log("", rmc(0));
        reader.accept(rest, 0, rest.length);
        IngestResult result = reader.finish();
        assertEquals(1, result.report().issues().count(IssueKind.TOO_LONG));
        assertEquals(1, channel(result, Paths.SOG).size());
        NmeaText.Decoded old = decoded(sentence("GPVTG,220.5,210.5,5.0,9.3"));
        assertEquals(220.5 * DEGREE, old.value(Paths.COG), 1e-12);
        assertEquals(5 * KNOT, old.value(Paths.SOG), 1e-12);
    }

    private static void assertAll(Channel channel, double expected) {
        assertEquals(20, channel.size());
        for (int i = 0; i < channel.size(); i++) {
            assertEquals(expected, channel.get(i), 1e-12);
        }
    }

    private static ChannelGroup groupOf(IngestResult result, String path) {
        BoatTrack track = track(result);
        ChannelGroup group = track.findGroupOf(path);
        assertNotNull(group, path);
        return group;
    }

    private static long firstTime(String... lines) {
        return track(read(lines)).startNanos();
    }

    static String rmcBody(String time, String date) {
        return "GPRMC," + time + ",A,0906.452,S,14012.516,W,06.6,227," + date + ",10,E,A";
    }

    private static String rmc(int second) {
        return sentence(rmcBody(time(second, ""), "110526"));
    }

    private static String time(int second, String fraction) {
        int t = 12 * 3600 + second;
        return String.format(Locale.ROOT, "%02d%02d%02d%s", t / 3600, t / 60 % 60, t % 60, fraction);
    }

    private static long nanos(String utc) {
        Instant instant = Instant.parse(utc);
        return instant.getEpochSecond() * 1_000_000_000L + instant.getNano();
    }
}
