package trimwright.ingest.signalk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.Paths;

class SignalKReaderTest {
    /** 2026-05-09T12:00:00Z. */
    private static final long NOON = 1_778_328_000_000_000_000L;

    private static IngestResult read(String... lines) {
        SignalKReader reader = new SignalKReader("Dunlin");
        long arrival = NOON;
        for (String line : lines) {
            byte[] bytes = (line + "\r\n").getBytes(StandardCharsets.UTF_8);
            // In two pieces, as a network may bring it.
            reader.accept(bytes, 0, bytes.length / 2, arrival);
            reader.accept(bytes, bytes.length / 2, bytes.length, arrival);
            arrival += 100_000_000L;
        }
        return reader.finish(1_000_000_000L);
    }

    private static double first(IngestResult result, String boat, String path) {
        for (BoatTrack track :
                assertInstanceOf(IngestResult.Tracks.class, result).tracks()) {
            Channel channel = track.find(path);
            if (track.boat().equals(boat) && channel != null) {
                return channel.get(0);
            }
        }
        throw new AssertionError("no " + path + " of " + boat);
    }

    @Test
    void valuesAreTakenInSiUnderTheirPathsAndAPositionOutOfDegrees() {
        IngestResult result = read(
                "{\"name\":\"server\",\"version\":\"1.8.2\",\"roles\":[\"main\"]}",
                "{\"context\":\"vessels.self\",\"updates\":[{\"$source\":\"wing\",\"timestamp\":\"2026-05-09T12:00:00.250Z\","
                        + "\"values\":[{\"path\":\"sails.wing.camber\",\"value\":-0.2},"
                        + "{\"path\":\"navigation.attitude\",\"value\":{\"roll\":0.05,\"pitch\":1e-2,\"yaw\":null}},"
                        + "{\"path\":\"navigation.position\",\"value\":{\"latitude\":45.0,\"longitude\":-90}},"
                        + "{\"path\":\"notifications.x\",\"value\":{\"state\":\"alarm \\u0041\"}}]}]}");
        assertEquals(-0.2, first(result, "Dunlin", Paths.CAMBER));
        assertEquals(0.05, first(result, "Dunlin", Paths.ROLL));
        assertEquals(0.01, first(result, "Dunlin", Paths.PITCH));
        assertEquals(Math.PI / 4, first(result, "Dunlin", Paths.LATITUDE), 1e-15);
        assertEquals(-Math.PI / 2, first(result, "Dunlin", Paths.LONGITUDE), 1e-15);
        assertEquals(0, result.report().issues().total());
        BoatTrack track =
                assertInstanceOf(IngestResult.Tracks.class, result).tracks().get(0);
        assertEquals(NOON + 250_000_000L, track.startNanos());
    }

    @Test
    void boatsAreToldApartByTheirContextAndAnUpdateWithoutTimeIsPlacedByItsArrival() {
        IngestResult result = read(
                "{\"context\":\"vessels.urn:mrn:x:1\",\"updates\":[{\"values\":[{\"path\":\"navigation.speedOverGround\",\"value\":7}]}]}",
                "{\"updates\":[{\"values\":[{\"path\":\"navigation.speedOverGround\",\"value\":9}]}]}",
                "{\"self\":\"vessels.urn:mrn:x:2\",\"version\":\"1.8.2\"}",
                "{\"context\":\"vessels.urn:mrn:x:2\",\"updates\":[{\"values\":[{\"path\":\"navigation.speedOverGround\",\"value\":8}]}]}");
        assertEquals(
                2, assertInstanceOf(IngestResult.Tracks.class, result).tracks().size());
        assertEquals(7, first(result, "urn:mrn:x:1", Paths.SOG));
        assertEquals(9, first(result, "Dunlin", Paths.SOG));
        BoatTrack track =
                assertInstanceOf(IngestResult.Tracks.class, result).tracks().get(0);
        assertEquals("Dunlin", track.boat());
        assertEquals(NOON + 1_100_000_000L, track.startNanos());
    }

    @Test
    void whatIsNoDeltaIsCountedAndReadingGoesOn() {
        IngestResult result = read(
                "garbage",
                "{\"updates\":[{\"values\":[{\"path\":\"navigation.speedOverGround\",\"value\":7}]}]",
                "{\"updates\":[{\"values\":[{\"path\":\"navigation.speedOverGround\",\"value\":700}]}]}",
                "{\"updates\":[{\"values\":[{\"path\":\"navigation.speedOverGround\",\"value\":7.5}]}]}",
                "[".repeat(5000),
                "x".repeat(DeltaScanner.LONGEST_LINE + 10));
        assertEquals(3, result.report().issues().count(IssueKind.NOT_A_DELTA));
        assertEquals(1, result.report().issues().count(IssueKind.IMPOSSIBLE_VALUE));
        assertEquals(1, result.report().issues().count(IssueKind.TOO_LONG));
        assertEquals(2, result.report().usable());
    }

    @Test
    void twoDevicesThatSendOnePathInOneContextStayApart() {
        String[] lines = new String[20];
        for (int i = 0; i < lines.length; i++) {
            boolean even = i % 2 == 0;
            lines[i] = "{\"context\":\"vessels.self\",\"updates\":[{\"$source\":\"" + (even ? "gps.a" : "gps.b")
                    + "\",\"values\":[{\"path\":\"navigation.speedOverGround\",\"value\":" + (even ? 7 : 9) + "}]}]}";
        }
        IngestResult result = read(lines);
        BoatTrack track =
                assertInstanceOf(IngestResult.Tracks.class, result).tracks().get(0);
        assertTrue(result.report().notes().contains(IngestNote.SEVERAL_SOURCES));
        for (String path : List.of(Paths.SOG, Paths.SOG + "@signalk-gps-b-speedoverground")) {
            Channel channel = track.find(path);
            assertNotNull(channel, path);
            assertEquals(10, channel.size());
            for (int i = 0; i < 10; i++) {
                assertEquals(path.equals(Paths.SOG) ? 7 : 9, channel.get(i), path);
            }
        }
    }

    @Test
    void jsonTextIsReadAsTheStandardHasIt() {
        assertEquals(
                Map.of("a", List.of(1.0, -2.5e3, true, false), "b\n\"", Map.of()),
                json(" { \"a\" : [1, -2.5e3 ,true,false], \"b\\n\\\"\":{} } "));
        assertEquals("\u00e9A", json("\"\u00e9\\u0041\""));
        assertNotNull(json("null"));
        for (String bad :
                new String[] {"", "{", "{\"a\"}", "[1,]", "\"a", "\"\\u12\"", "\"\\", "tru", "1 2", "-", "\"\\x\""}) {
            assertNull(json(bad), bad);
        }
    }

    private static @Nullable Object json(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return JsonText.find(bytes, 0, bytes.length);
    }
}
