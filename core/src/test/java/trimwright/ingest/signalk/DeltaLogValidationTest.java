package trimwright.ingest.signalk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.evidence.ValidatedAgainst;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.ingest.n2k.N2kReader;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;

/** Logs of Signal K deltas: a real one against the bus that it came from, and what files bring. */
class DeltaLogValidationTest {
    @ReferenceTest
    @ValidatedAgainst(
            source = "real-logs",
            where = "6,003 Signal K deltas that another open program made of the NMEA 2000 log of 2014-08-15; that log"
                    + " read here too",
            tolerance = "apparent wind and boat speed of both readings sample by sample: 0.005 m/s, 5e-5 rad")
    void deltasAndTheBusTheyCameFrom() {
        IngestResult result = read(ReferenceFiles.bytes("data/derived-aava.signalk.delta.jsonl.gz"));
        assertEquals(6_003, result.report().lines());
        assertEquals(0, result.report().issues().count(IssueKind.NOT_A_DELTA));
        BoatTrack deltas = track(result);
        BoatTrack bus = track(N2kReader.read(ReferenceFiles.bytes("data/aava-n2k.data.gz"), "Dunlin", null));
        for (String path : new String[] {Paths.AWA, Paths.AWS, Paths.STW}) {
            Channel one = channel(deltas, path);
            Channel other = channel(bus, path);
            assertEquals(other.size(), one.size(), path);
            for (int i = 0; i < one.size(); i++) {
                assertEquals(other.get(i), one.get(i), path.equals(Paths.AWA) ? 5.1e-5 : 0.0051, path + " " + i);
            }
        }
        assertNotNull(deltas.find(Paths.LATITUDE));
    }

    @Test
    void deltasOfTheBoatHerself() {
        String log = """
                {"name":"server","version":"2.0.0","self":"urn:mrn:signalk:uuid:1","roles":["master"]}
                {"context":"vessels.urn:mrn:signalk:uuid:1","updates":[{"$source":"wind.1","timestamp":"2027-03-06T10:00:00.000Z","values":[{"path":"environment.wind.angleApparent","value":-0.5},{"path":"environment.wind.speedApparent","value":12.5}]}]}
                {"context":"vessels.urn:mrn:imo:mmsi:230000000","updates":[{"$source":"ais","timestamp":"2027-03-06T10:00:00.100Z","values":[{"path":"navigation.speedOverGround","value":3}]}]}
                {"updates":[{"$source":"gps","timestamp":"2027-03-06T10:00:01Z","values":[{"path":"navigation.position","value":{"latitude":-10.5,"longitude":130.25}},{"path":"navigation.speedOverGround","value":null},{"path":"sails.wing.camber","value":"deep"}]}]}
                {"updates":[{"$source":"imu","values":[{"path":"navigation.attitude","value":{"roll":0.05,"pitch":-0.01,"yaw":1}}]}]}
                {"updates":[{"$source":"wind.1","timestamp":"2027-03-06T10:00:02Z","values":[{"path":"environment.wind.angleApparent","value":-0.4}]}]}
                not json
                """;
        IngestResult result = read(log);
        BoatTrack track = track(result);
        assertEquals(2, channel(track, Paths.AWA).size());
        assertEquals(-0.5, channel(track, Paths.AWA).get(0));
        assertEquals(12.5, channel(track, Paths.AWS).get(0));
        assertEquals(Math.toRadians(-10.5), channel(track, Paths.LATITUDE).get(0));
        assertEquals(Math.toRadians(130.25), channel(track, Paths.LONGITUDE).get(0));
        assertEquals(0.05, channel(track, Paths.ROLL).get(0));
        assertNull(track.find(Paths.SOG), "null is absent, and another vessel's speed is not ours");
        assertEquals(1, result.report().issues().count(IssueKind.OTHER_VESSEL));
        assertEquals(1, result.report().issues().count(IssueKind.NOT_A_DELTA));
        assertEquals(1, result.report().issues().count(IssueKind.BAD_NUMBER));
    }

    @Test
    void twoDevicesThatSendOnePathStayApart() {
        StringBuilder log = new StringBuilder();
        for (int i = 0; i < 10; i++) {
            // The second vane is slower, and its speed comes in updates of its own.
            log.append(delta("vane.1", i, "angleApparent", 0.5)).append(delta("vane.1", i, "speedApparent", 10));
            if (i % 2 == 0) {
                log.append(delta("vane-1", i, "angleApparent", -0.25));
            }
            log.append(delta("vane-1", i, "speedApparent", 20));
        }
        IngestResult result = read(log.toString());
        BoatTrack track = track(result);
        assertEquals(0, result.report().issues().total());
        assertTrue(result.report().notes().contains(IngestNote.SEVERAL_SOURCES));
        assertEvery(0.5, 10, channel(track, Paths.AWA));
        assertEvery(10, 10, channel(track, Paths.AWS));
        assertEvery(-0.25, 5, channel(track, Paths.AWA + "@signalk-vane-1-2-wind-angleapparent"));
        assertEvery(20, 10, channel(track, Paths.AWS + "@signalk-vane-1-2-wind-speedapparent"));
    }

    @Test
    void speedOfAWindComesFromTheDeviceThatGivesItsAngle() {
        StringBuilder log = new StringBuilder();
        for (int i = 0; i < 10; i++) {
            log.append(delta("b", i, "angleApparent", 0.5));
            if (i < 5) {
                log.append(delta("a", i, "angleApparent", -0.25)).append(delta("b", i, "speedApparent", 10));
            }
            log.append(delta("a", i, "speedApparent", 20));
        }
        BoatTrack track = track(read(log.toString()));
        assertEvery(0.5, 10, channel(track, Paths.AWA));
        assertEvery(10, 5, channel(track, Paths.AWS));
    }

    @Test
    void aSourceIsNamedByItsReferenceElseByWhatItSaysOfItself() {
        String value = "\"values\":[{\"path\":\"environment.wind.speedOverGround\",\"value\":3},"
                + "{\"path\":\"navigation.speedOverGround\",\"value\":4}]";
        BoatTrack track = track(read("{\"updates\":["
                + "{\"source\":{\"label\":\"N2K Bus\",\"pgn\":129026,\"src\":\"115\"},\"timestamp\":\"2027-03-06T10:00:00Z\","
                + value + "},{\"timestamp\":\"2027-03-06T10:00:00Z\"," + value + "}]}"));
        assertEquals(
                "signalk-n2k-bus-115-129026-speedoverground signalk-n2k-bus-115-129026-wind-speedoverground"
                        + " signalk-unnamed-speedoverground signalk-unnamed-wind-speedoverground",
                String.join(" ", track.groups().stream().map(ChannelGroup::name).toList()));
    }

    @Test
    void aLogWithoutAnyTimeNeedsAStart() {
        String log =
                "{\"updates\":[{\"values\":[{\"path\":\"navigation.speedOverGround\",\"value\":4}]}]}\n{\"a\":1}\n";
        IngestResult none = read(log);
        assertInstanceOf(IngestResult.NoDate.class, none);
        assertEquals(1, none.report().issues().count(IssueKind.NOT_A_DELTA));
        DeltaLogReader reader = new DeltaLogReader("Dunlin", 1_778_328_000_000_000_000L);
        byte[] bytes = log.getBytes(StandardCharsets.UTF_8);
        reader.accept(bytes, 0, bytes.length);
        IngestResult result = reader.finish();
        assertEquals(1_778_328_000, track(result).startNanos() / 1e9, 1);
        assertTrue(result.report().notes().contains(IngestNote.SPACING_ASSUMED));
    }

    private static String delta(String source, int second, String path, double value) {
        return "{\"updates\":[{\"$source\":\"" + source + "\",\"timestamp\":\"2027-03-06T10:00:0" + second
                + "Z\",\"values\":[{\"path\":\"environment.wind." + path + "\",\"value\":" + value + "}]}]}\n";
    }

    private static void assertEvery(double value, int count, Channel channel) {
        assertEquals(count, channel.size(), channel.path());
        for (int i = 0; i < count; i++) {
            assertEquals(value, channel.get(i), channel.path());
        }
    }

    private static IngestResult read(String log) {
        return read(log.getBytes(StandardCharsets.UTF_8));
    }

    private static IngestResult read(byte[] log) {
        DeltaLogReader reader = new DeltaLogReader("Dunlin", null);
        // In two pieces, as it may come.
        reader.accept(log, 0, log.length / 3);
        reader.accept(log, log.length / 3, log.length);
        return reader.finish();
    }

    private static BoatTrack track(IngestResult result) {
        return assertInstanceOf(IngestResult.Tracks.class, result).tracks().get(0);
    }

    private static Channel channel(BoatTrack track, String path) {
        Channel channel = track.find(path);
        assertNotNull(channel, path);
        return channel;
    }
}
