package trimwright.ingest.n2k;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.ingest.n2k.N2kText.channel;
import static trimwright.ingest.n2k.N2kText.track;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.evidence.ValidatedAgainst;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;

/** Two logs of real boats, and what another program made of one of them. */
class N2kLogsValidationTest {
    private static final String SAIL = "data/aava-n2k.data.gz";

    @ReferenceTest
    @ValidatedAgainst(
            source = "real-logs",
            where = "upwind sailing of 2014-08-15, NMEA 2000 in plain text",
            tolerance = "half of the last digit of the figures given")
    void upwind() {
        IngestResult result = N2kReader.read(ReferenceFiles.bytes(SAIL), "Dunlin", null);
        BoatTrack track = track(result);
        assertEquals(21_595, result.report().lines());
        assertEquals(0, result.report().issues().count(IssueKind.NOT_A_FRAME));
        assertTrue(result.report().notes().contains(IngestNote.TIME_FROM_STAMPS));
        assertEquals(599.9, (track.endNanos() - track.startNanos()) / 1e9, 0.5);
        assertRange(channel(track, Paths.STW), 2.65, 3.76, 0.005);
        assertRange(channel(track, Paths.AWS), 4.9, 9.6, 0.05);
        double[] awa = degrees(channel(track, Paths.AWA));
        assertEquals(21, awa[0], 0.5);
        assertEquals(46, awa[awa.length / 2], 0.5);
        assertEquals(81, awa[awa.length - 1], 0.5);
        assertEquals("n2k-speed-115", nameOf(track, Paths.STW), "the other device sends ground speed only");
    }

    @ReferenceTest
    @ValidatedAgainst(
            source = "real-logs",
            where = "the same log as another open program turned it into Signal K deltas, 6,003 of them",
            tolerance = "exact to the digits given: 0.005 m/s, 5e-5 rad, 5e-8 deg; every delta of five paths")
    void asAnotherProgramReadsIt() {
        BoatTrack track = track(N2kReader.read(ReferenceFiles.bytes(SAIL), "Dunlin", null));
        String text =
                new String(ReferenceFiles.bytes("data/derived-aava.signalk.delta.jsonl.gz"), StandardCharsets.UTF_8);
        Map<String, Double> tolerances = Map.of(
                Paths.STW, 0.00501, Paths.AWS, 0.00501, Paths.AWA, 5.1e-5, Paths.SOG, 0.00501, Paths.COG, 5.1e-5);
        Map<String, Integer> compared = new TreeMap<>();
        Pattern stamp = Pattern.compile("\"pgn\":(\\d+),\"src\":\"(\\d+)\"\\},\"timestamp\":\"([^\"]+)\"");
        for (String line : text.split("\n")) {
            Matcher head = stamp.matcher(line);
            if (!head.find()) {
                continue;
            }
            long time = Instant.parse(head.group(3)).toEpochMilli() * 1_000_000L;
            for (Map.Entry<String, Double> entry : tolerances.entrySet()) {
                Matcher value = Pattern.compile("\"" + Pattern.quote(entry.getKey()) + "\",\"value\":(-?[0-9.e-]+)")
                        .matcher(line);
                ChannelGroup group = groupOf(track, head.group(1), head.group(2), entry.getKey());
                if (value.find() && group != null && compare(group, entry, time, Double.parseDouble(value.group(1)))) {
                    compared.merge(entry.getKey(), 1, Integer::sum);
                }
            }
        }
        assertEquals(tolerances.keySet(), compared.keySet());
        compared.forEach((path, count) -> assertTrue(count > 500, path + ": " + count));
    }

    private static boolean compare(ChannelGroup group, Map.Entry<String, Double> entry, long time, double expected) {
        int i = group.indexAtOrBefore(time);
        assertTrue(i >= 0 && group.timeNanos(i) == time, entry.getKey() + " at " + time);
        Channel channel = find(group, entry.getKey());
        assertEquals(expected, channel.get(i), entry.getValue(), entry.getKey() + " at " + time);
        return true;
    }

    private static @Nullable ChannelGroup groupOf(BoatTrack track, String pgn, String device, String path) {
        String word = Map.of("128259", "speed", "130306", "wind-apparent", "129026", "course-true")
                .get(pgn);
        return track.groups().stream()
                .filter(group -> group.name().equals("n2k-" + word + "-" + device))
                .filter(group -> group.channels().stream().anyMatch(c -> isOf(c, path)))
                .findFirst()
                .orElse(null);
    }

    private static Channel find(ChannelGroup group, String path) {
        return group.channels().stream().filter(c -> isOf(c, path)).findFirst().orElseThrow();
    }

    private static boolean isOf(Channel channel, String path) {
        return channel.path().equals(path) || channel.path().startsWith(path + "@");
    }

    @ReferenceTest
    @ValidatedAgainst(
            source = "real-logs",
            where = "console text of a bus without any time, 6,026 frames",
            tolerance = "exact count")
    void consoleText() {
        long start = Instant.parse("2013-01-01T00:00:00Z").toEpochMilli() * 1_000_000L;
        byte[] log = ReferenceFiles.bytes("data/canboat-candumpSample1.txt.gz");
        IngestResult result = N2kReader.read(log, "Dunlin", start);
        long others = result.report().issues().count(IssueKind.NOT_A_FRAME);
        long remarks = new String(log, StandardCharsets.ISO_8859_1)
                .lines()
                .filter(line -> line.isBlank() || line.startsWith("#"))
                .count();
        assertEquals(6_026, result.report().lines() - remarks - others);
        BoatTrack track = track(result);
        assertTrue(track.find(Paths.LATITUDE) != null || track.find(Paths.STW) != null);
    }

    private static String nameOf(BoatTrack track, String path) {
        ChannelGroup group = track.findGroupOf(path);
        return group == null ? "" : group.name();
    }

    private static double[] degrees(Channel channel) {
        return Arrays.stream(channel.toArray())
                .filter(value -> !Double.isNaN(value))
                .map(Math::toDegrees)
                .boxed()
                .sorted(Comparator.naturalOrder())
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private static void assertRange(Channel channel, double least, double most, double tolerance) {
        double[] values = Arrays.stream(channel.toArray())
                .filter(value -> !Double.isNaN(value))
                .sorted()
                .toArray();
        assertEquals(least, values[0], tolerance, channel.path());
        assertEquals(most, values[values.length - 1], tolerance, channel.path());
    }
}
