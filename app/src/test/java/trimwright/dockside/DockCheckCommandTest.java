package trimwright.dockside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.cli.CliRun;
import trimwright.store.Library;

class DockCheckCommandTest {
    @TempDir
    Path home;

    /** Simulates a morning of that seed and brings its logs into a library of their own. */
    private Path morning(int seed) {
        Path folder = home.resolve("morning-" + seed);
        CliRun made = CliRun.in(home, "simulate", "--dock", "--seed", "" + seed, "--out", folder.toString());
        assertEquals(0, made.exit(), made.err());
        CliRun brought = CliRun.in(
                home,
                "import",
                folder.resolve("logs/dunlin.nmea").toString(),
                folder.resolve("logs/dunlin-wing.csv").toString(),
                "--map",
                folder.resolve("wing-map.toml").toString(),
                "--library",
                folder.resolve("library").toString());
        assertEquals(0, brought.exit(), brought.err());
        return folder;
    }

    private CliRun check(Path morning, String... more) {
        return CliRun.in(
                home,
                Stream.concat(
                                Stream.of(
                                        "dock-check",
                                        "latest",
                                        "--boat",
                                        "whimbrel14",
                                        "--library",
                                        morning.resolve("library").toString()),
                                Stream.of(more))
                        .toArray(String[]::new));
    }

    private JsonNode checked(Path morning) throws IOException {
        CliRun run = check(morning, "--pull", "1500", "--antenna-aft", "12.5", "--antenna-starboard", "0", "--json");
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out());
    }

    /**
     * Every fault of the truth file is found on its line, and nothing is blamed that is sound. The check was made on 1 to 20; those
     * from 101 on are for judging it.
     */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 101, 102, 103, 104, 105})
    void plantedFaultsAreFoundAndNoOthers(int seed) throws IOException {
        Path morning = morning(seed);
        DockTruth truth = new DockTruth(checked(morning), Files.readAllLines(morning.resolve("truth/dunlin-dock.csv")));
        truth.judge();
        assertEquals(List.of(), truth.wrong, "seed " + seed);
        assertTrue(truth.planted >= 2, "seed " + seed);
    }

    @Test
    void aCheckIsKeptOnceWithItsSessionAndChangesNothingElse() throws IOException {
        Path morning = morning(3);
        Path session = session(morning);
        String before = Files.readString(session.resolve("session.json"));
        checked(morning);
        checked(morning);
        assertEquals(List.of("001-dunlin.json"), names(session.resolve("dock")));
        String kept = Files.readString(session.resolve("dock/001-dunlin.json"));
        assertEquals(
                "dock-check/1", new ObjectMapper().readTree(kept).path("schema").asText());
        // Without the pull it says something else: that one is kept beside the first.
        assertEquals(0, check(morning).exit());
        assertEquals(List.of("001-dunlin.json", "002-dunlin.json"), names(session.resolve("dock")));
        assertEquals(kept, Files.readString(session.resolve("dock/001-dunlin.json")));
        assertEquals(before, Files.readString(session.resolve("session.json")));
    }

    @Test
    void whatStopsIsToldAfloatForADayAndForThatBoatOnly() throws IOException {
        Path morning = morning(3);
        checked(morning);
        try (Library library = Library.open(morning.resolve("library"))) {
            Instant race = Instant.parse("2027-03-06T13:00:00Z");
            List<String> stops = DockStops.of(library, "Dunlin", race);
            assertTrue(stops.contains("wing out to port"), stops.toString());
            assertFalse(stops.contains("pitch zero"), stops.toString());
            assertEquals(List.of(), DockStops.of(library, "Godwit", race));
            assertEquals(List.of(), DockStops.of(library, "Dunlin", race.plusSeconds(86_400)));
            assertEquals(List.of(), DockStops.of(library, "Dunlin", race.minusSeconds(7_200)));
        }
    }

    private static Path session(Path morning) throws IOException {
        try (Stream<Path> sessions = Files.list(morning.resolve("library/sessions"))) {
            return sessions.findFirst().orElseThrow();
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void theTextSaysWhatIsWrongAndOffersMeasuredRatesAsLinesOfTheBoatFile() {
        CliRun run = check(morning(3), "--pull", "1500");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("dead: nothing was heard of it"), run.out());
        // Planted: camber 0.7263 times 9 degrees a second.
        assertTrue(run.out().contains("camber_deg_per_s = 6.5   # in [handling]"), run.out());
        assertFalse(run.out().contains("twist_deg_per_s ="), run.out());
        assertTrue(run.out().contains("Caution"), run.out());
        assertTrue(run.err().contains("nothing else was changed"), run.err());
    }

    @Test
    void whatCannotBeCheckedIsOneLineWithWhatToDo() {
        Path morning = morning(3);
        CliRun late = check(morning, "--start", "2027-03-06T11:39:30Z");
        assertEquals(3, late.exit());
        assertEquals(1, late.err().lines().count(), late.err());
        assertTrue(late.err().contains("30 s of data"), late.err());
        CliRun odd = check(morning, "--start", "half past eleven");
        assertEquals(2, odd.exit());
        assertEquals(2, check(morning, "--own", "Godwit").exit());
        assertEquals(2, check(morning, "--pull", "-5").exit());
        assertEquals(2, check(morning, "--live").exit());
        CliRun none = CliRun.in(home, "dock-check", "--live", "--boat", "whimbrel14", "--library", home.toString());
        assertEquals(2, none.exit());
        assertTrue(none.err().contains("nothing is being recorded"), none.err());
        assertEquals(1, none.err().lines().count(), none.err());
    }

    @Test
    void theListHasAllStepsOfTenMinutes() {
        CliRun run = CliRun.in(home, "dock-check", "--list");
        assertEquals(0, run.exit());
        assertEquals(13, run.out().lines().count());
        assertTrue(run.out().contains(" 9:00  "), run.out());
    }
}
