package trimwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.cli.CliRun;

/** The demo as the README shows it, and the same path by hand. */
class DemoDocTest {
    @TempDir
    Path home;

    @Test
    void theDemoPrintsWhatTheReadmeShowsAndEqualsThePathByHand() {
        Path demoLibrary = home.resolve("demo");
        CliRun demo = CliRun.in(home, "demo", "--once", "--library", demoLibrary.toString());
        assertEquals(0, demo.exit(), demo.err());
        GeneratedBlock.check("README.md", "demo --once", "```\n" + demo.out().stripTrailing() + "\n```");

        Path day = home.resolve("day");
        Path byHand = home.resolve("by-hand");
        run("simulate", "--seed", "1", "--out", day.toString());
        run(
                "import",
                day + "/logs/avocet.nmea",
                day + "/logs/curlew.nmea",
                day + "/logs/dunlin.nmea",
                day + "/logs/godwit.nmea",
                day + "/logs/plover.nmea",
                day + "/logs/turnstone.nmea",
                day + "/logs/avocet-wing.csv",
                day + "/logs/curlew-wing.csv",
                day + "/logs/dunlin-wing.csv",
                day + "/logs/godwit-wing.csv",
                day + "/logs/plover-wing.csv",
                day + "/logs/turnstone-wing.csv",
                "--map",
                day + "/wing-map.toml",
                "--course",
                day + "/course.toml",
                "--library",
                byHand.toString());
        assertEquals(debriefIn(demoLibrary), debriefIn(byHand));
        assertTrue(Files.exists(byHand.resolve("library.json")));
    }

    private void run(String... arguments) {
        CliRun run = CliRun.in(home, arguments);
        assertEquals(0, run.exit(), run.err());
    }

    private String debriefIn(Path library) {
        CliRun run =
                CliRun.in(home, "debrief", "latest", "--boat", "whimbrel14", "--library", library.toString(), "--json");
        assertEquals(0, run.exit(), run.err());
        return run.out();
    }
}
