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

        Path byHand = home.resolve("by-hand");
        String example = ProjectFiles.ROOT.resolve("examples/saltmere").toString();
        CliRun brought = CliRun.in(
                home,
                "import",
                example + "/dunlin.nmea",
                example + "/dunlin-wing.csv",
                "--map",
                example + "/wing-map.toml",
                "--boat-name",
                "Dunlin",
                "--library",
                byHand.toString());
        assertEquals(0, brought.exit(), brought.err());
        assertEquals(debriefIn(demoLibrary), debriefIn(byHand));
        assertTrue(Files.exists(byHand.resolve("library.json")));
    }

    private String debriefIn(Path library) {
        CliRun run =
                CliRun.in(home, "debrief", "latest", "--boat", "whimbrel14", "--library", library.toString(), "--json");
        assertEquals(0, run.exit(), run.err());
        return run.out();
    }
}
