package trimwright.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.cli.CliRun;
import trimwright.store.Library;
import trimwright.store.SessionInfo;

/** Other processes that work on the library, and some that are killed at it. */
class SuddenEndTest {
    private static final int KILLS = 5;

    @TempDir
    Path home;

    @Test
    void aKilledImportLeavesTheLibraryAsItWas() throws Exception {
        Path first = Files.write(home.resolve("first.nmea"), ImportCommandTest.log(0, 60));
        assertEquals(0, CliRun.in(home, "import", first.toString()).exit());
        Path big = Files.write(home.resolve("second.nmea"), ImportCommandTest.log(6 * 3600, 12_000));
        long began = System.nanoTime();
        Path other = home.resolve("timing");
        run(other, "import", big.toString()).waitFor();
        long whole = Math.max(1_000_000_000L, System.nanoTime() - began);
        Random random = new Random(11);
        int killed = 0;
        for (int i = 0; i < KILLS; i++) {
            Process process = run(home, "import", big.toString());
            boolean ended = process.waitFor((long) (whole * (0.3 + 0.7 * random.nextDouble())), TimeUnit.NANOSECONDS);
            process.destroyForcibly().waitFor();
            killed += ended ? 0 : 1;
            List<SessionInfo> sessions = checked();
            if (sessions.size() == 2) {
                // It came through; forget it and go on.
                forget(sessions.get(1));
            }
        }
        assertTrue(killed > 0, "none was killed in time");
        assertEquals(0, CliRun.in(home, "import", big.toString()).exit());
        assertEquals(2, checked().size());
        try (var entries = Files.list(home.resolve("data/sessions"))) {
            assertEquals(2, entries.count(), "leftovers");
        }
    }

    private static void forget(SessionInfo session, Path data) throws IOException {
        try (var inside = Files.walk(data.resolve("sessions").resolve(session.id()))) {
            for (Path path : inside.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private void forget(SessionInfo session) throws IOException {
        forget(session, home.resolve("data"));
    }

    /** Every session that is listed loads whole. */
    private List<SessionInfo> checked() {
        try (Library library = Library.open(home.resolve("data"))) {
            List<SessionInfo> sessions = library.sessions();
            assertFalse(sessions.isEmpty());
            assertEquals("2026-05-11-first", sessions.get(0).id());
            sessions.forEach(session -> assertFalse(library.load(session).isEmpty()));
            return sessions;
        }
    }

    @Test
    void severalProcessesReadWhileOneWrites() throws Exception {
        Path first = Files.write(home.resolve("first.nmea"), ImportCommandTest.log(0, 60));
        assertEquals(0, CliRun.in(home, "import", first.toString()).exit());
        Path second = Files.write(home.resolve("second.nmea"), ImportCommandTest.log(6 * 3600, 5_000));
        Path third = Files.write(home.resolve("third.nmea"), ImportCommandTest.log(9 * 3600 + 1, 5_000));
        List<Process> processes = new ArrayList<>();
        processes.add(run(home, "import", second.toString()));
        processes.add(run(home, "import", third.toString()));
        processes.add(run(home, "sessions", "--json"));
        processes.add(run(home, "sessions"));
        checked();
        for (Process process : processes) {
            assertTrue(process.waitFor(120, TimeUnit.SECONDS));
            assertEquals(0, process.exitValue());
        }
        assertEquals(3, checked().size(), "two writers at once wait for each other");
    }

    private static Process run(Path home, String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                "trimwright.Main"));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put("TRIMWRIGHT_DATA", home.resolve("data").toString());
        return builder.redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
