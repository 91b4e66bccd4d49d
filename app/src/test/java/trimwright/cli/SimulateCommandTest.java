package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SimulateCommandTest {
    @TempDir
    Path home;

    @ParameterizedTest
    @CsvSource({
        "'', --seed",
        "--seed=1 --scenario=day.toml, --scenario",
        "--seed=-1, --seed",
        "--seed=1 --minutes=5, --minutes",
        "--scenario=absent.toml, absent.toml",
        "--seed=1 --boat=nosuch, nosuch"
    })
    void whatIsWrongIsOneLineAndNothingIsWritten(String options, String named) {
        Path out = home.resolve("day");
        String line = ("simulate --out=" + out + " " + options).strip();
        CliRun run = CliRun.in(home, line.split(" "));
        assertEquals(2, run.exit(), run.err());
        assertTrue(run.err().contains(named), run.err());
        assertEquals(1, run.err().strip().lines().count(), run.err());
        assertFalse(Files.exists(out));
    }

    @Test
    void everyFaultOfAScenarioFileHasItsOwnLine() throws IOException {
        Path file = home.resolve("day.toml");
        Files.writeString(file, "schema = \"scenario/1\"\nseed = 1\nwakes = \"yes\"\nwaves = 1\n");
        CliRun run =
                CliRun.in(home, "simulate", "--out", home.resolve("day").toString(), "--scenario", file.toString());
        assertEquals(2, run.exit(), run.err());
        assertTrue(run.err().contains("wakes") && run.err().contains("waves"), run.err());
        assertTrue(run.err().strip().lines().allMatch(line -> line.contains("day.toml")), run.err());
    }
}
