package trimwright.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.text.UserInputException;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.track.Quality;

class LibraryTest {
    private static final long DAY = Instant.parse("2026-05-09T12:00:00Z").getEpochSecond() * 1_000_000_000L;

    @TempDir
    Path folder;

    @Test
    void whatIsWrittenIsReadBack() throws IOException {
        try (Library library = Library.openOrCreate(folder)) {
            SessionInfo added = add(library, "Dunlin", DAY, sha("a"));
            assertEquals("2026-05-09-dunlin", added.id());
            SessionInfo session = library.getSession("2026-05");
            assertEquals(added, session);
            BoatTrack track = library.load(session).get(0);
            Channel aws = track.find(Paths.AWS);
            assertNotNull(aws);
            assertArrayEquals(new double[] {1.5, Double.NaN, 2.5}, aws.toArray());
            assertEquals(Quality.GOOD, aws.quality(0));
            assertEquals(Quality.ABSENT, aws.quality(1));
            assertEquals(Quality.JUMP, aws.quality(2));
            assertEquals(DAY + 2, track.groups().get(0).timeNanos(2));
            assertEquals("made of a", rawOf(session, sha("a")));
            assertEquals(Map.of("bad_checksum", 2L), session.sources().get(0).issues());
        }
    }

    @Test
    void sessionsOfOneDayGetNumbersAndPrefixesMustBeUnique() throws IOException {
        try (Library library = Library.openOrCreate(folder)) {
            add(library, "Dunlin", DAY, sha("a"));
            add(library, "Dunlin", DAY + 3_600_000_000_000L, sha("b"));
            assertEquals(
                    List.of("2026-05-09-dunlin", "2026-05-09-dunlin-2"),
                    library.sessions().stream().map(SessionInfo::id).toList());
            SessionInfo latest = library.findSession("latest");
            assertNotNull(latest);
            assertEquals("2026-05-09-dunlin-2", latest.id());
            assertEquals(
                    "2026-05-09-dunlin", library.getSession("2026-05-09-dunlin").id());
            UserInputException fault = assertThrows(UserInputException.class, () -> library.findSession("2026"));
            assertTrue(lineOf(fault).contains("2026-05-09-dunlin-2"), lineOf(fault));
            assertNull(library.findSession("2025"));
        }
    }

    @Test
    void aSourceIsKnownByItsBytes() throws IOException {
        try (Library library = Library.openOrCreate(folder)) {
            add(library, "Dunlin", DAY, sha("a"));
            try (LibraryWriter writer = library.writer()) {
                assertNotNull(writer.findSessionOfSource(sha("a")));
                assertNull(writer.findSessionOfSource(sha("c")));
            }
        }
    }

    @Test
    void aSourceThatChangesMeanwhileIsRefusedAndLeavesNothing() throws IOException {
        try (Library library = Library.openOrCreate(folder);
                LibraryWriter writer = library.writer()) {
            SourceInfo info = new SourceInfo(sha("a"), "log.nmea", "nmea0183", 10, 3, Map.of(), List.of());
            LibraryWriter.RawSource changed =
                    new LibraryWriter.RawSource(info, () -> new ByteArrayInputStream(new byte[] {1}), null);
            UserInputException fault = assertThrows(
                    UserInputException.class,
                    () -> writer.add("Dunlin", List.of(track("Dunlin", DAY, sha("a"))), List.of(changed)));
            assertTrue(lineOf(fault).contains("log.nmea changed"), lineOf(fault));
            assertEquals(List.of(), library.sessions());
        }
    }

    @Test
    void aSessionGrowsByBoats() throws IOException {
        try (Library library = Library.openOrCreate(folder)) {
            SessionInfo first = add(library, "Dunlin", DAY, sha("a"));
            try (LibraryWriter writer = library.writer()) {
                writer.extend(first, List.of(track("Avocet", DAY - 5, sha("b"))), List.of(source(sha("b"))));
            }
            SessionInfo grown = library.getSession(first.id());
            assertEquals(
                    List.of("Avocet", "Dunlin"),
                    grown.boats().stream().map(BoatInfo::boat).toList());
            assertEquals(2, grown.sources().size());
            assertEquals(2, library.load(grown).size());
            assertEquals(Instant.ofEpochSecond(0, DAY - 5), grown.start());
        }
    }

    @Test
    void aNewerLibraryIsRefusedInOneLine() throws IOException {
        Files.writeString(folder.resolve("library.json"), "{\"schema\":\"library/2\"}");
        UserInputException fault = assertThrows(UserInputException.class, () -> Library.open(folder));
        assertTrue(lineOf(fault).contains("library/2"), lineOf(fault));
        assertFalse(lineOf(fault).contains("\n"));
        assertThrows(UserInputException.class, () -> Library.openOrCreate(folder));
    }

    @Test
    void aFolderWithoutLibraryIsRefusedForReading() {
        assertThrows(UserInputException.class, () -> Library.open(folder));
    }

    @Test
    void damagedSessionsAreNamed() throws IOException {
        try (Library library = Library.openOrCreate(folder)) {
            SessionInfo session = add(library, "Dunlin", DAY, sha("a"));
            Path json = folder.resolve("sessions/" + session.id() + "/session.json");
            Files.writeString(json, Files.readString(json).substring(0, 100));
            UserInputException fault = assertThrows(UserInputException.class, library::sessions);
            assertTrue(lineOf(fault).contains("session.json"), lineOf(fault));
        }
    }

    @Test
    void damagedParquetIsNamed() throws IOException {
        try (Library library = Library.openOrCreate(folder)) {
            SessionInfo session = add(library, "Dunlin", DAY, sha("a"));
            Path file = folder.resolve("sessions/" + session.id())
                    .resolve(session.boats().get(0).groups().get(0).file());
            Files.write(file, new byte[] {1, 2, 3});
            UserInputException fault = assertThrows(UserInputException.class, () -> library.load(session));
            assertTrue(lineOf(fault).startsWith(file.toString()), lineOf(fault));
            assertFalse(lineOf(fault).contains("\n"));
        }
    }

    @Test
    void leftoversOfADeadWriterAreInvisibleAndCleared() throws IOException {
        try (Library library = Library.openOrCreate(folder)) {
            Path leftover = folder.resolve("sessions/.new-x/boats");
            Files.createDirectories(leftover);
            Files.writeString(leftover.resolve("half.parquet"), "half");
            assertEquals(List.of(), library.sessions());
            add(library, "Dunlin", DAY, sha("a"));
            assertFalse(Files.exists(leftover));
            try (Stream<Path> entries = Files.list(folder.resolve("sessions"))) {
                assertEquals(1, entries.count());
            }
        }
    }

    @Test
    void sameInputsGiveSameBytes() throws IOException {
        byte[][] bytes = new byte[2][];
        for (int round = 0; round < 2; round++) {
            Path own = folder.resolve("library" + round);
            try (Library library = Library.openOrCreate(own)) {
                SessionInfo session = add(library, "Dunlin", DAY, sha("a"));
                bytes[round] = Files.readAllBytes(own.resolve("sessions/" + session.id())
                        .resolve(session.boats().get(0).groups().get(0).file()));
            }
        }
        assertArrayEquals(bytes[0], bytes[1]);
    }

    private static SessionInfo add(Library library, String boat, long start, String sha) {
        try (LibraryWriter writer = library.writer()) {
            return writer.add(boat, List.of(track(boat, start, sha)), List.of(source(sha)));
        }
    }

    private static LibraryWriter.SourcedTrack track(String boat, long start, String sha) {
        byte[] marks = {(byte) Quality.GOOD.ordinal(), (byte) Quality.ABSENT.ordinal(), (byte) Quality.JUMP.ordinal()};
        ChannelGroup group = new ChannelGroup(
                "ii-mwv-r",
                new long[] {start, start + 1, start + 2},
                List.of(
                        new Channel(Paths.AWS, new double[] {1.5, Double.NaN, 2.5}, marks),
                        Channel.of(Paths.AWA, new double[] {0.1, 0.2, -0.3})));
        return new LibraryWriter.SourcedTrack(new BoatTrack(boat, List.of(group)), sha);
    }

    private static LibraryWriter.RawSource source(String sha) {
        SourceInfo info = new SourceInfo(sha, "log.nmea", "nmea0183", 10, 3, Map.of("bad_checksum", 2L), List.of("x"));
        return new LibraryWriter.RawSource(info, () -> new ByteArrayInputStream(bytesOf(sha)), null);
    }

    private String rawOf(SessionInfo session, String sha) throws IOException {
        Path raw = folder.resolve("sessions/" + session.id() + "/raw/" + sha + ".gz");
        try (GZIPInputStream in = new GZIPInputStream(Files.newInputStream(raw))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String lineOf(UserInputException fault) {
        return String.valueOf(fault.getMessage());
    }

    private static byte[] bytesOf(String sha) {
        for (String word : List.of("a", "b", "c")) {
            if (sha(word).equals(sha)) {
                return ("made of " + word).getBytes(StandardCharsets.UTF_8);
            }
        }
        throw new IllegalArgumentException(sha);
    }

    private static String sha(String word) {
        try {
            byte[] bytes = ("made of " + word).getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
