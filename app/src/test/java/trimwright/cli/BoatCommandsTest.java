package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BoatCommandsTest {
    @TempDir
    Path home;

    @Test
    void anExportedBoatPassesItsCheck() throws IOException {
        CliRun export = CliRun.in(home, "boat", "export", "whimbrel14");
        assertEquals(0, export.exit());
        Path file = Files.writeString(home.resolve("mine.toml"), export.out());
        CliRun check = CliRun.in(home, "boat", "check", file.toString());
        assertEquals(0, check.exit(), check.err());
        assertTrue(check.out().endsWith("no faults.\n"), check.out());
    }

    @Test
    void faultsAreOneLineEachAndExitCodeTwo() throws IOException {
        String text = CliRun.in(home, "boat", "export", "whimbrel14").out();
        Path file = Files.writeString(home.resolve("mine.toml"), text.replace("count = 6", "count = 60\njib_m2 = 3"));
        CliRun check = CliRun.in(home, "boat", "check", file.toString());
        assertEquals(2, check.exit());
        assertEquals("", check.out());
        assertEquals(2, check.err().lines().count(), check.err());
        assertTrue(check.err().startsWith(file + ":"), check.err());
        CliRun json = CliRun.in(home, "boat", "check", file.toString(), "--json");
        assertEquals(2, json.exit());
        assertTrue(json.out().contains("\"key\" : \"crew.count\""), json.out());
        assertEquals("", json.err());
    }

    @Test
    void aBoatThatDoesNotExistIsOneLine() {
        for (String[] args : new String[][] {{"boat", "check", "none.toml"}, {"boat", "export", "none"}, {"boat"}}) {
            CliRun run = CliRun.in(home, args);
            assertEquals(2, run.exit());
            assertEquals(1, run.err().lines().count(), run.err());
        }
    }
}
