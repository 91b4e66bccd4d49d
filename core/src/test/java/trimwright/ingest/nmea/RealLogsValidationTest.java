package trimwright.ingest.nmea;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.ingest.nmea.NmeaText.channel;
import static trimwright.ingest.nmea.NmeaText.track;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.evidence.ValidatedAgainst;
import trimwright.ingest.DoubleList;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;

/** Seven logs of real boats; the figures were counted by a scanner that shares nothing with this program. */
class RealLogsValidationTest {
    private static final double KNOT = 1852.0 / 3600.0;

    @ReferenceTest
    @ValidatedAgainst(
            source = "real-logs",
            where = "passage of 2010-11-21",
            tolerance = "half of the last digit of the figures given")
    void passage() {
        IngestResult result = read("data/rob-passage-2010-11-21.nmea.gz");
        BoatTrack track = track(result);
        assertEquals(37_699, result.report().lines());
        Issues issues = result.report().issues();
        assertEquals(5, issues.count(IssueKind.CONTROL_BYTES));
        assertEquals(0, issues.count(IssueKind.BAD_CHECKSUM));
        assertEquals(0, issues.count(IssueKind.BAD_NUMBER) + issues.count(IssueKind.MERGED));
        assertSpan(track, 1327);
        assertGaps(track, 13, 4);
        assertRange(channel(track, Paths.SOG), 3.8 * KNOT, 10.2 * KNOT, 0.05 * KNOT);
        // The figure counts every sentence, also those that repeat a second; the track has each second once.
        assertEquals(6.8, median(everySog("data/rob-passage-2010-11-21.nmea.gz")) / KNOT, 0.05);
        assertEquals(6.9, median(channel(track, Paths.SOG).toArray()) / KNOT, 0.05);
        assertRange(channel(track, Paths.STW), 5.6 * KNOT, 7.7 * KNOT, 0.05 * KNOT);
        assertDegrees(channel(track, Paths.AWA), 203, 260, 0.5);
        assertRange(channel(track, Paths.AWS), 11 * KNOT, 20 * KNOT, 0.5 * KNOT);
        assertDegrees(channel(track, Paths.HEADING_MAGNETIC), 189, 238, 0.5);
        assertEquals("ii-mwv-r", nameOf(track, Paths.AWA));
        assertEquals("ii-mwv-t", nameOf(track, Paths.TWS));
        assertEquals(6563, channel(track, Paths.TWS + "@cc-mwv-t").size());
        assertTrue(result.report().notes().contains(IngestNote.COMPUTED_VALUES_APART));
    }

    @ReferenceTest
    @ValidatedAgainst(source = "real-logs", where = "compass circles of 2010-11-03", tolerance = "exact counts")
    void swing() {
        IngestResult result = read("data/rob-swing-2010-11-03.nmea.gz");
        BoatTrack track = track(result);
        assertSpan(track, 1335);
        assertGaps(track, 16, Double.NaN);
        Channel heading = channel(track, Paths.HEADING_MAGNETIC);
        TreeSet<Integer> tens = new TreeSet<>();
        for (int i = 0; i < heading.size(); i++) {
            tens.add((int) Math.floor(Math.toDegrees(heading.get(i)) / 10));
        }
        assertEquals(36, tens.size(), "headings all round");
    }

    @ReferenceTest
    @ValidatedAgainst(source = "real-logs", where = "gofree log: moored, XDR faults", tolerance = "exact counts")
    void mooredWithBadTransducers() {
        byte[] log = ReferenceFiles.bytes("data/gofree-merrimac.log.gz");
        IngestResult result = NmeaReader.read(log, NmeaOptions.of("x"));
        assertEquals(6_324, result.report().lines());
        // 141 transducer sentences with three faulty groups each, nothing else wrong; no long line is lost.
        assertEquals(
                Map.of(IssueKind.BAD_NUMBER, 423L), result.report().issues().counts());
        long longLines = new String(log, StandardCharsets.ISO_8859_1)
                .lines()
                .filter(line -> line.length() + 2 > 82)
                .count();
        assertEquals(331, longLines);
        assertEquals(142, channel(result, Paths.SOG).size());
        assertEquals(1375, channel(result, Paths.HEADING_MAGNETIC).size());
        assertRange(channel(result, Paths.ROLL), Math.toRadians(0.5), Math.toRadians(0.5), 1e-12);
    }

    @ReferenceTest
    @ValidatedAgainst(source = "real-logs", where = "n2kd log: numeric talkers", tolerance = "exact counts")
    void numericTalkers() {
        byte[] log = ReferenceFiles.bytes("data/n2kd-183-merrimac.log");
        IngestResult.NoDate without =
                assertInstanceOf(IngestResult.NoDate.class, NmeaReader.read(log, NmeaOptions.of("x")));
        assertEquals(541, without.report().lines());
        assertEquals(0, without.report().issues().total());
        long start = nanos("2014-05-01T10:00:00Z");
        IngestResult result = NmeaReader.read(log, NmeaOptions.of("x").withStart(start));
        assertEquals(start, track(result).startNanos());
        assertTrue(result.report().notes().contains(IngestNote.SPACING_ASSUMED));
        assertEquals(122, channel(result, Paths.AWA).size());
        assertEquals(25, channel(result, Paths.AWA + "@24-mwv-r").size());
        assertEquals(247, channel(result, Paths.HEADING_MAGNETIC).size());
        assertEquals(123, channel(result, Paths.HEADING_MAGNETIC + "@24-hdg").size());
    }

    @ReferenceTest
    @ValidatedAgainst(
            source = "real-logs",
            where = "close reach of 146 s",
            tolerance = "half of the last digit of the figures given")
    void closeReach() {
        IngestResult result = read("data/gpsd-sail-146s.log");
        BoatTrack track = track(result);
        ChannelGroup rmc = group(track, Paths.SOG);
        assertEquals(146, (rmc.timeNanos(rmc.size() - 1) - rmc.timeNanos(0)) / 1e9, 1.0);
        assertRange(channel(track, Paths.SOG), 4.3 * KNOT, 6.7 * KNOT, 0.05 * KNOT);
        assertRange(channel(track, Paths.STW), 6.0 * KNOT, 6.9 * KNOT, 0.05 * KNOT);
        assertDegrees(channel(track, Paths.AWA), 49, 87, 0.5);
        assertRange(channel(track, Paths.AWS), 9 * KNOT, 15 * KNOT, 0.5 * KNOT);
        assertRange(channel(track, Paths.ROLL), Math.toRadians(-4.9), Math.toRadians(4.5), 1e-9);
        assertEquals(1457, channel(track, Paths.HEADING_MAGNETIC).size());
        assertTrue(result.report().notes().contains(IngestNote.CENTURY_FROM_LOG));
        assertEquals(0, result.report().issues().count(IssueKind.BAD_NUMBER));
    }

    @ReferenceTest
    @ValidatedAgainst(
            source = "gpsd-3.22",
            where = "its own decode of the close reach (TPV reports with time and position)",
            tolerance = "digits that it prints: 1e-9 deg, 1 mm/s, 1e-4 deg")
    void closeReachAsAnotherDecoderReadsIt() {
        BoatTrack track = track(read("data/gpsd-sail-146s.log"));
        ChannelGroup group = group(track, Paths.SOG);
        Map<Long, double[]> expected = new HashMap<>();
        Pattern report = Pattern.compile("\"time\":\"([^\"]+)\".*?\"lat\":([-0-9.]+),\"lon\":([-0-9.]+)"
                + ".*?\"track\":([-0-9.]+).*?\"speed\":([-0-9.]+)");
        String text = new String(ReferenceFiles.bytes("data/gpsd-sail-146s.log.chk.gz"), StandardCharsets.UTF_8);
        String before = "";
        for (String line : text.split("\n", -1)) {
            Matcher matcher = report.matcher(line);
            // Reports made at other sentences may hold a course and speed that it worked out itself.
            if (before.startsWith("$GPVTG") && line.startsWith("{\"class\":\"TPV\"") && matcher.find()) {
                double[] values = new double[4];
                Arrays.setAll(values, i -> Double.parseDouble(matcher.group(i + 2)));
                expected.put(nanos(matcher.group(1)), values);
            }
            before = line;
        }
        assertTrue(expected.size() > 130, expected.size() + " reports");
        // Its course and speed are those of the VTG behind the RMC.
        ChannelGroup courses = group(track, Paths.SOG + "@gp-vtg");
        int compared = 0;
        for (int i = 0; i < group.size(); i++) {
            double[] values = expected.get(group.timeNanos(i));
            if (values != null) {
                assertEquals(
                        values[0], Math.toDegrees(channel(track, Paths.LATITUDE).get(i)), 2e-9);
                assertEquals(
                        values[1],
                        Math.toDegrees(channel(track, Paths.LONGITUDE).get(i)),
                        2e-9);
                int vtg = courses.indexAtOrBefore(group.timeNanos(i)) + 1;
                assertEquals(values[2], Math.toDegrees(courses.channels().get(1).get(vtg)), 1e-4);
                assertEquals(values[3], courses.channels().get(0).get(vtg), 1e-3);
                compared++;
            }
        }
        assertTrue(compared > 130, compared + " compared");
    }

    @ReferenceTest
    @ValidatedAgainst(source = "real-logs", where = "receiver without a fix", tolerance = "exact counts")
    void emptyFieldsUntilTheFix() {
        IngestResult result = read("data/gpsd-nofix-empty-fields.log");
        assertEquals(0, result.report().issues().total());
        // Counted in the file: 21 of 215 GGA have a position, 4 of 215 HDT a heading.
        assertEquals(21, channel(result, Paths.LATITUDE).size());
        assertEquals(4, channel(result, Paths.HEADING).size());
        assertEquals(nanos("2018-09-07T19:40:50Z"), track(result).startNanos());
    }

    @ReferenceTest
    @ValidatedAgainst(source = "real-logs", where = "31 lines round a broken one", tolerance = "exact counts")
    void mergedLine() {
        IngestResult result = read("data/rob-merged-line-excerpt.nmea");
        assertEquals(Map.of(IssueKind.MERGED, 1L), result.report().issues().counts());
        assertEquals(16, result.report().issues().first().get(0).line());
        // The sentence that begins inside the broken one counts: three CCMWV lines and this one.
        assertEquals(4, channel(result, Paths.TWS + "@cc-mwv-t").size());
        assertEquals(1, channel(result, Paths.SOG).size());
    }

    private static IngestResult read(String file) {
        return NmeaReader.read(ReferenceFiles.bytes(file), NmeaOptions.of("x"));
    }

    private static ChannelGroup group(BoatTrack track, String path) {
        ChannelGroup group = track.findGroupOf(path);
        if (group == null) {
            throw new AssertionError(path);
        }
        return group;
    }

    private static String nameOf(BoatTrack track, String path) {
        return group(track, path).name();
    }

    /** The figures were counted on RMC. */
    private static void assertSpan(BoatTrack track, double seconds) {
        List<Long> times = statedTimes(track);
        assertEquals(seconds, (times.get(times.size() - 1) - times.get(0)) / 1e9, 0.5);
    }

    private static void assertGaps(BoatTrack track, int count, double longest) {
        List<Long> times = statedTimes(track);
        int gaps = 0;
        long most = 0;
        for (int i = 1; i < times.size(); i++) {
            long dt = times.get(i) - times.get(i - 1);
            gaps += dt > 2_000_000_000L ? 1 : 0;
            most = Math.max(most, dt);
        }
        assertEquals(count, gaps);
        if (!Double.isNaN(longest)) {
            assertEquals(longest, most / 1e9, 0.5);
        }
    }

    private static List<Long> statedTimes(BoatTrack track) {
        TreeSet<Long> times = new TreeSet<>();
        for (ChannelGroup group : track.groups()) {
            if (group.name().endsWith("-rmc")) {
                for (int i = 0; i < group.size(); i++) {
                    times.add(group.timeNanos(i));
                }
            }
        }
        return new ArrayList<>(times);
    }

    private static void assertRange(Channel channel, double least, double most, double tolerance) {
        assertEquals(
                least,
                Arrays.stream(channel.toArray())
                        .filter(v -> !Double.isNaN(v))
                        .min()
                        .orElseThrow(),
                tolerance);
        assertEquals(
                most,
                Arrays.stream(channel.toArray())
                        .filter(v -> !Double.isNaN(v))
                        .max()
                        .orElseThrow(),
                tolerance);
    }

    /** Compared as 0 to 360, as the figures were counted. */
    private static void assertDegrees(Channel channel, double least, double most, double tolerance) {
        double[] degrees = Arrays.stream(channel.toArray())
                .map(v -> (Math.toDegrees(v) + 360) % 360)
                .toArray();
        assertEquals(least, Arrays.stream(degrees).min().orElseThrow(), tolerance);
        assertEquals(most, Arrays.stream(degrees).max().orElseThrow(), tolerance);
    }

    private static double[] everySog(String file) {
        DoubleList values = new DoubleList();
        NmeaDecoder decoder = new NmeaDecoder(new Issues());
        NmeaReading reading = new NmeaReading();
        NmeaScanner scanner =
                new NmeaScanner(new Issues(), ChecksumRule.REQUIRED, (sentence, line, position, stamp) -> {
                    if (decoder.decode(sentence, line, reading) && reading.layout() == NmeaLayout.RMC) {
                        values.add(reading.value(2));
                    }
                });
        byte[] log = ReferenceFiles.bytes(file);
        scanner.accept(log, 0, log.length);
        scanner.end();
        return IntStream.range(0, values.size()).mapToDouble(values::get).toArray();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static long nanos(String utc) {
        Instant instant = Instant.parse(utc);
        return instant.getEpochSecond() * 1_000_000_000L + instant.getNano();
    }
}
