package trimwright.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.cli.CliRun;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestResult;
import trimwright.ingest.LogReader;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.Paths;

/** Tracks in GPX, and that each kind of log is known by its first bytes. */
class OtherReadersTest {
    @TempDir
    Path home;

    @Test
    void aTrackWithoutSpeedGetsItFromItsPositions() {
        // Along the equator a second of arc is 6378137 m x pi / 648000 = 30.922 m: from the semi-major axis of WGS 84.
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < 5; i++) {
            points.append("<trkpt lat=\"0\" lon=\"")
                    .append(i / 3600.0)
                    .append("\"><time>2027-03-06T10:00:0")
                    .append(2 * i)
                    .append("Z</time></trkpt>\n");
        }
        String document = "<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"t\""
                + " xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n" + points + "</trkseg></trk></gpx>";
        IngestResult result = read(new GpxReader("Dunlin"), bytes(document));
        BoatTrack track = track(result);
        assertTrue(result.report().notes().contains(IngestNote.SPEED_FROM_POSITIONS));
        assertEquals(5, channel(track, Paths.LATITUDE).size());
        for (int i = 0; i < 5; i++) {
            assertEquals(
                    6378137 * Math.PI / 648000 / 2, channel(track, Paths.SOG).get(i), 1e-6);
            assertEquals(Math.PI / 2, channel(track, Paths.COG).get(i), 1e-9);
        }
    }

    @Test
    void brokenDocumentsGiveOneLine() throws IOException {
        CliRun run = imported("cut.gpx", "<?xml version=\"1.0\"?><gpx version=\"1.1\"><trk><trkseg><trkpt lat=\"1\"");
        assertEquals(2, run.exit());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains("cut.gpx"), run.err());
    }

    @Test
    void eachKindIsKnownByItsFirstBytes() throws IOException {
        assertImported("bus.txt", "nmea2000", "2027-03-06T10:00:00.000Z,2,130306,42,255,8,00,b4,01,ac,58,fa,ff,ff\n");
        assertImported(
                "deltas.jsonl",
                "signalk",
                "{\"updates\":[{\"timestamp\":\"2027-03-06T10:00:02Z\",\"values\":[{\"path\":\"environment.wind.angleApparent\",\"value\":-0.4}]}]}\n");
        assertImported(
                "track.gpx",
                "gpx",
                "<?xml version=\"1.0\"?><gpx version=\"1.1\" creator=\"t\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>"
                        + "<trkpt lat=\"1\" lon=\"2\"><time>2027-03-06T10:00:00Z</time></trkpt></trkseg></trk></gpx>");
    }

    private void assertImported(String name, String kind, String text) throws IOException {
        CliRun run = imported(name, text);
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("2027-03-06"), run.out());
        Path session;
        try (Stream<Path> all = Files.list(home.resolve("library/sessions"))) {
            session = all.filter(path -> path.getFileName().toString().contains(name.substring(0, name.indexOf('.'))))
                    .findFirst()
                    .orElseThrow();
        }
        String info = Files.readString(session.resolve("session.json"));
        assertTrue(info.contains("\"" + kind + "\""), info);
    }

    private CliRun imported(String name, String text) throws IOException {
        Path file = Files.writeString(home.resolve(name), text);
        return CliRun.in(
                home,
                "import",
                file.toString(),
                "--library",
                home.resolve("library").toString());
    }

    private static IngestResult read(LogReader reader, byte[] log) {
        // In two pieces, as it may come.
        reader.accept(log, 0, log.length / 3);
        reader.accept(log, log.length / 3, log.length);
        return reader.finish();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
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
