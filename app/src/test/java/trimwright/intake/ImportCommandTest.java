package trimwright.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.cli.CliRun;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.store.Library;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.Paths;

class ImportCommandTest {
    private static final String MAP = """
            schema = "csv-map/1"
            boat_file_suffix = "-wing"
            [time]
            format = "iso"
            column = [{ name = "time" }]
            [[column]]
            name = "camber"
            channel = "sails.wing.camber"
            unit = "deg"
            """;

    @TempDir
    Path home;

    @Test
    void aLogIsReadStoredAndListed() throws IOException {
        Path log = write("dunlin.nmea", log(0, 30));
        CliRun run = imported(log.toString(), "--boat-name", "Dunlin");
        assertEquals(0, run.exit(), run.err());
        assertEquals(
                "2026-05-11-dunlin: 0 min 29 s from 2026-05-11 03:00:00 UTC-09:00, 1 boat(s): Dunlin\n", run.out());
        assertTrue(run.err().contains("60 lines, 60 with values"), run.err());
        CliRun list = CliRun.in(home, "sessions", "--json");
        JsonNode session = json(list.out()).path("sessions").path(0);
        assertEquals("2026-05-11-dunlin", session.path("session").asText());
        assertEquals("2026-05-11T12:00:00Z", session.path("start_utc").asText());
        assertEquals("Dunlin", session.path("boats").path(0).path("boat").asText());
        assertTrue(CliRun.in(home, "sessions").out().contains("2026-05-11-dunlin"));
    }

    @Test
    void knownBytesAreAlreadyThere() throws IOException {
        Path log = write("dunlin.nmea", log(0, 30));
        imported(log.toString());
        Path copy = write("copy-of-it.nmea", log(0, 30));
        CliRun again = imported(copy.toString());
        assertEquals(0, again.exit());
        assertEquals(copy + ": already there, in session 2026-05-11-dunlin\n", again.out());
        assertEquals(1, sessions());
        JsonNode document =
                json(CliRun.in(home, "import", copy.toString(), "--json").out());
        assertEquals(
                "already_there", document.path("files").path(0).path("outcome").asText());
    }

    @Test
    void boatsOfOneTimeMakeOneSessionAndOthersTheirOwn() throws IOException {
        Path avocet = write("avocet.nmea", log(0, 30));
        Path curlew = write("curlew.nmea.gz", gzip(log(10, 30)));
        Path wing = write("avocet-wing.csv", "time,camber\n2026-05-11T12:00:00Z,18\n2026-05-11T12:00:01Z,19\n");
        Path later = write("dunlin.nmea", log(8 * 3600, 30));
        CliRun run = imported(
                avocet.toString(),
                curlew.toString(),
                wing.toString(),
                later.toString(),
                "--map",
                write("m.toml", MAP).toString());
        assertEquals(0, run.exit(), run.err());
        try (Library library = Library.open(home.resolve("data"))) {
            assertEquals(
                    List.of("2026-05-11-fleet", "2026-05-11-dunlin"),
                    library.sessions().stream().map(s -> s.id()).toList());
            List<BoatTrack> tracks = library.load(library.getSession("2026-05-11-fleet"));
            assertEquals(
                    List.of("avocet", "curlew"),
                    tracks.stream().map(BoatTrack::boat).toList());
            Channel camber = tracks.get(0).find(Paths.CAMBER);
            assertNotNull(camber);
            assertEquals(Math.toRadians(19), camber.get(1), 1e-12);
            assertNotNull(tracks.get(0).find(Paths.SOG));
        }
    }

    @Test
    void boatsWhoseNamesMakeTheSameFolderStayApart() throws IOException {
        String map = MAP.replace("[time]", "boat = { name = \"boat\" }\n[time]");
        String table = "time,boat,camber\n2026-05-11T12:00:00Z,Avocet,18\n2026-05-11T12:00:00Z,AVOCET,25\n";
        CliRun run = imported(
                write("x.csv", table).toString(), "--map", write("m.toml", map).toString());
        assertEquals(0, run.exit(), run.err());
        try (Library library = Library.open(home.resolve("data"))) {
            List<BoatTrack> tracks = library.load(library.getSession("latest"));
            assertEquals(
                    List.of("AVOCET", "Avocet"),
                    tracks.stream().map(BoatTrack::boat).toList());
            Channel first = tracks.get(0).find(Paths.CAMBER);
            Channel second = tracks.get(1).find(Paths.CAMBER);
            assertNotNull(first);
            assertNotNull(second);
            assertEquals(Math.toRadians(25), first.get(0), 1e-12);
            assertEquals(Math.toRadians(18), second.get(0), 1e-12);
        }
    }

    @Test
    void filesCanBeAddedToASession() throws IOException {
        imported(write("avocet.nmea", log(0, 30)).toString());
        CliRun run = imported(write("curlew.nmea", log(9 * 3600, 30)).toString(), "--session", "latest");
        assertEquals(0, run.exit(), run.err());
        assertEquals(1, sessions());
        assertEquals(
                2,
                imported(write("x.nmea", log(5, 9)).toString(), "--session", "2030")
                        .exit());
    }

    @Test
    void aPartlyBadFileIsImportedWithItsCounts() throws IOException {
        String log = new String(log(0, 30), StandardCharsets.ISO_8859_1)
                .replaceFirst("RMC,120005", "RMC,120006")
                .replaceFirst("HDG,100", "HDG,1\0\0\0");
        CliRun run = CliRun.in(home, "import", write("x.nmea", log).toString(), "--json");
        assertEquals(0, run.exit());
        JsonNode file = json(run.out()).path("files").path(0);
        assertEquals(1, file.path("issues").path("bad_checksum").asInt());
        assertEquals(1, file.path("issues").path("control_bytes").asInt());
        assertEquals(11, file.path("first_issues").path(1).path("line").asInt());
        assertTrue(run.err().contains("1 left out: wrong checksum; first in line 11"), run.err());
    }

    @Test
    void sentencesWithoutChecksumAreTakenOnlyIfAsked() throws IOException {
        String bare = new String(log(0, 9), StandardCharsets.ISO_8859_1).replaceAll("\\*..", "");
        Path file = write("bare.nmea", bare);
        refused(file, "--accept-unchecked");
        assertEquals(0, imported(file.toString(), "--accept-unchecked").exit());
        assertEquals(1, sessions());
    }

    @Test
    void badInputIsOneLineExitTwoAndNothingWritten() throws IOException {
        Random random = new Random(3);
        byte[] noise = new byte[100_000];
        random.nextBytes(noise);
        byte[] packed = gzip(log(0, 200));
        byte[] damaged = packed.clone();
        Arrays.fill(damaged, 40, 60, (byte) 0x55);
        String map = write("m.toml", MAP).toString();
        refused(write("empty.nmea", ""), "is empty");
        refused(write("empty.nmea.gz", gzip(new byte[0])), "is empty");
        refused(write("noise.nmea", noise), "is no text");
        refused(
                write(
                        "utf16.nmea",
                        new String(log(0, 9), StandardCharsets.ISO_8859_1).getBytes(StandardCharsets.UTF_16)),
                "UTF-16");
        refused(
                write(
                        "utf16le.nmea",
                        new String(log(0, 9), StandardCharsets.ISO_8859_1).getBytes(StandardCharsets.UTF_16LE)),
                "UTF-16");
        refused(write("prose.txt", "Dear diary,\nwe went sailing.\n"), "--map");
        refused(write("sums.nmea", "$GPRMC,120000,A*00\n$GPRMC,120001,A*00\n"), "2 left out: wrong checksum");
        refused(write("none.nmea", "$GPRMC,120000,A\n$GPRMC,120001,A\n"), "2 left out: no checksum");
        refused(write("cut.nmea.gz", Arrays.copyOf(packed, packed.length / 2)), "break off");
        refused(write("damaged.nmea.gz", damaged), "damaged");
        refused(home.resolve("absent.nmea"), "no such file");
        refused(home, "is a folder");
        refused(write("nodate.nmea", "$GNGLL,4404.14012,N,12118.85993,W,001037.00,A,A*67\n"), "--start");
        refused(write("col.csv", "clock,camber\n1,2\n"), "no column \"time\"", "--map", map);
        refused(write("words.csv", "time,camber\nnever,x\n"), "nothing usable", "--map", map);
        refused(write("latin.csv", "zeit;wölbung\n".getBytes(StandardCharsets.ISO_8859_1)), "no column", "--map", map);
        refused(write("wide.csv", "time,camber\n".getBytes(StandardCharsets.UTF_16)), "UTF-16", "--map", map);
        refused(write("ok.nmea", log(0, 9)), "no mapping file", "--map", home.toString());
        refused(write("ok.nmea", log(0, 9)), "--start", "--start", "yesterday");
        refused(write("ok.nmea", log(0, 9)), "--boat-name", "--boat-name", " ");
        assertFalse(Files.exists(home.resolve("data/library.json")), "a library was begun for nothing");
        // A good file beside a bad one is not half imported.
        CliRun both = imported(
                write("ok.nmea", log(0, 9)).toString(), write("empty.nmea", "").toString());
        assertEquals(2, both.exit());
        assertFalse(Files.exists(home.resolve("data/library.json")));
    }

    private void refused(Path file, String part, String... more) {
        List<String> args = new ArrayList<>(List.of("import", file.toString()));
        args.addAll(List.of(more));
        CliRun run = CliRun.in(home, args.toArray(String[]::new));
        assertEquals(2, run.exit(), file + ": " + run.err());
        assertEquals("", run.out());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains(part), run.err());
    }

    @Test
    void aLineOfAHundredMegabytesNeedsNoMemory() throws IOException {
        Path huge = home.resolve("huge.nmea");
        try (OutputStream out = Files.newOutputStream(huge)) {
            out.write(log(0, 5));
            byte[] chunk = new byte[1 << 20];
            Arrays.fill(chunk, (byte) 'A');
            for (int i = 0; i < 100; i++) {
                out.write(chunk);
            }
            out.write('\n');
            out.write(log(5, 5));
        }
        Runtime runtime = Runtime.getRuntime();
        System.gc();
        long before = runtime.totalMemory() - runtime.freeMemory();
        CliRun run = imported(huge.toString());
        System.gc();
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.err().contains("1 left out: longer than any log line; first in line 11"), run.err());
        assertTrue(runtime.totalMemory() - runtime.freeMemory() - before < 50_000_000);
        Path only = home.resolve("only.bin");
        try (OutputStream out = Files.newOutputStream(only)) {
            byte[] chunk = new byte[1 << 20];
            Arrays.fill(chunk, (byte) 'A');
            for (int i = 0; i < 100; i++) {
                out.write(chunk);
            }
        }
        refused(only, "--map");
    }

    @Test
    void tablesOfSixteenBitsAreReadWhereTheMappingSaysSo() throws IOException {
        String map = write("m.toml", MAP.replace("[time]", "encoding = \"utf-16\"\n[time]"))
                .toString();
        StringBuilder table = new StringBuilder("time,camber\n");
        for (int i = 0; i < 20_000; i++) {
            table.append(
                    String.format(Locale.ROOT, "2026-05-11T%02d:%02d:%02dZ,18%n", 12 + i / 3600, i / 60 % 60, i % 60));
        }
        CliRun run = imported(
                write("x.csv", table.toString().getBytes(StandardCharsets.UTF_16))
                        .toString(),
                "--map",
                map);
        assertEquals(0, run.exit(), run.err());
        try (Library library = Library.open(home.resolve("data"))) {
            assertEquals(
                    20_000,
                    library.getSession("latest").boats().get(0).groups().get(0).rows());
        }
        refused(write("plain.csv", "time,camber\n2026-05-11T12:00:00Z,1\n"), "not text of 16 bits", "--map", map);
    }

    @Test
    void aNewerLibraryIsRefused() throws IOException {
        Files.createDirectories(home.resolve("data"));
        Files.writeString(home.resolve("data/library.json"), "{\"schema\":\"library/2\"}");
        refused(write("ok.nmea", log(0, 9)), "library/2");
        CliRun list = CliRun.in(home, "sessions");
        assertEquals(2, list.exit());
        assertEquals(1, list.err().lines().count());
    }

    @ReferenceTest
    void allSevenLogsAndTheSonicTableAreImported() throws IOException {
        for (String name : List.of(
                "rob-passage-2010-11-21.nmea.gz",
                "rob-swing-2010-11-03.nmea.gz",
                "gofree-merrimac.log.gz",
                "gpsd-sail-146s.log",
                "gpsd-nofix-empty-fields.log",
                "rob-merged-line-excerpt.nmea")) {
            CliRun run = imported(ReferenceFiles.get("data/" + name).toString());
            assertEquals(0, run.exit(), run.err());
        }
        String noDate = ReferenceFiles.get("data/n2kd-183-merrimac.log").toString();
        assertEquals(2, imported(noDate).exit());
        assertEquals(0, imported(noDate, "--start", "2014-05-01T10:00:00Z").exit());
        String map = """
                schema = "csv-map/1"
                header_row = 2
                skip_rows = 4
                [time]
                format = "iso"
                column = [{ name = "TIMESTAMP" }]
                [[column]]
                name = "Ux"
                channel = "extra.sonic.x"
                unit = "m/s"
                [[column]]
                name = "Ts"
                channel = "environment.outside.temperature"
                unit = "C"
                """;
        CliRun sonic = imported(
                ReferenceFiles.get("data/sonic-20Hz-TOA5-2012-06-07-1245.dat.gz")
                        .toString(),
                "--map",
                write("sonic.toml", map).toString());
        assertEquals(0, sonic.exit(), sonic.err());
        assertEquals(8, sessions());
        try (Library library = Library.open(home.resolve("data"))) {
            for (var session : library.sessions()) {
                assertFalse(library.load(session).isEmpty());
            }
            BoatTrack passage = library.load(library.getSession("2010-11-21")).get(0);
            Channel aws = passage.find(Paths.AWS);
            assertNotNull(aws);
            assertEquals(1094, aws.size());
        }
    }

    private CliRun imported(String... args) {
        return CliRun.in(
                home, Stream.concat(Stream.of("import"), Arrays.stream(args)).toArray(String[]::new));
    }

    private int sessions() {
        try (Library library = Library.open(home.resolve("data"))) {
            return library.sessions().size();
        }
    }

    private Path write(String name, String text) throws IOException {
        return write(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private Path write(String name, byte[] bytes) throws IOException {
        return Files.write(home.resolve(name), bytes);
    }

    private static JsonNode json(String text) throws JsonProcessingException {
        return new ObjectMapper().readTree(text);
    }

    private static byte[] gzip(byte[] bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
            zip.write(bytes);
        }
        return out.toByteArray();
    }

    /** A position and a heading a second from 12:00:00 on. */
    static byte[] log(int from, int seconds) {
        StringBuilder log = new StringBuilder();
        for (int s = from; s < from + seconds; s++) {
            int t = 12 * 3600 + s;
            log.append(sentence(String.format(
                    Locale.ROOT,
                    "GPRMC,%02d%02d%02d,A,0906.%03d,S,14012.516,W,06.6,227,110526,10,E,A",
                    t / 3600 % 24,
                    t / 60 % 60,
                    t % 60,
                    s % 1000)));
            log.append(sentence("IIHDG,100,,,,"));
        }
        return log.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String sentence(String body) {
        int sum = 0;
        for (int i = 0; i < body.length(); i++) {
            sum ^= body.charAt(i);
        }
        return String.format(Locale.ROOT, "$%s*%02X\r\n", body, sum);
    }
}
