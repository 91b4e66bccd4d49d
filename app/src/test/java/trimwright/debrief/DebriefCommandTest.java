package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.cli.CliRun;
import trimwright.store.Library;
import trimwright.store.LibraryWriter;
import trimwright.store.SourceInfo;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.wind.SyntheticTrack;

class DebriefCommandTest {
    @TempDir
    Path home;

    /** Upwind with a tack that costs speed, bear-away, downwind with a gybe; one spell off the foils. */
    @BeforeEach
    void importOneBoat() {
        BoatTrack track = new SyntheticTrack(500, 5)
                .wind(t -> 8 + 0.5 * Math.sin(t / 20), t -> 5 * Math.sin(t / 47))
                .heading(t -> t < 120
                        ? -45
                        : t < 250
                                ? Math.min(45, -45 + 10 * (t - 120))
                                : t < 380 ? Math.min(140, 45 + 10 * (t - 250)) : Math.min(220, 140 + 10 * (t - 380)))
                .speed(t -> t > 120 && t < 135 ? 6 : t > 300 && t < 310 ? 5 : 11 + Math.sin(t / 9))
                .attitude(t -> t < 129 ? 4 : -4, t -> 1)
                .with(Paths.RIDE_HEIGHT, t -> t > 300 && t < 310 ? 0 : 0.9)
                .with(Paths.CAMBER, t -> Math.toRadians(t < 129 ? 14 : -14))
                .build();
        try (Library library = Library.openOrCreate(home.resolve("library"));
                LibraryWriter writer = library.writer()) {
            // SHA-256 of one zero byte.
            String hash = "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d";
            SourceInfo info = new SourceInfo(hash, "dunlin.nmea", "nmea0183", 1, 1, Map.of(), List.of());
            writer.add(
                    "dunlin",
                    List.of(new LibraryWriter.SourcedTrack(track, hash)),
                    List.of(new LibraryWriter.RawSource(info, () -> new ByteArrayInputStream(new byte[1]), null)));
        }
    }

    private CliRun debrief(String... more) {
        List<String> args = new ArrayList<>(List.of(
                "debrief", "latest", "--library", home.resolve("library").toString()));
        args.addAll(List.of(more));
        return CliRun.in(home, args.toArray(String[]::new));
    }

    @Test
    void jsonHoldsLegsTurnsPhasesLedgerAndQuality() throws IOException {
        CliRun run = debrief("--json");
        assertEquals(0, run.exit(), run.err());
        JsonNode document = new ObjectMapper().readTree(run.out());
        assertEquals("debrief/1", document.path("schema").asText());
        assertEquals("2027-01-15-dunlin", document.path("session").asText());
        JsonNode boat = document.path("boats").get(0);
        assertEquals("Dunlin", boat.path("boat").asText());
        assertEquals("own_best", boat.path("reference").asText());
        assertEquals("no_log", boat.path("speed_reason").asText());
        assertEquals("over_ground", boat.path("true_wind").asText());
        assertEquals(List.of("upwind", "downwind"), texts(boat.path("legs"), "kind"));
        assertEquals(List.of("tack", "bear_away", "gybe"), texts(boat.path("turns"), "kind"));
        assertEquals(1, boat.path("off_foil").size());
        JsonNode phase = boat.path("phases").get(0);
        assertEquals("starboard", phase.path("tack").asText());
        // Free of the tack: heel to windward and depth to leeward are positive on both.
        JsonNode last = boat.path("phases").get(boat.path("phases").size() - 1);
        assertEquals(4, phase.path("heel_deg").asDouble(), 0.01);
        assertEquals(14, phase.path("camber_deg").asDouble(), 0.01);
        assertEquals("starboard", last.path("tack").asText());
        assertTrue(phase.path("tws_kn").asDouble() > 14 && phase.path("tws_kn").asDouble() < 17);
        assertTrue(phase.path("difference_low_kn").asDouble()
                <= phase.path("difference_kn").asDouble());
        JsonNode channels = boat.path("quality").path("channels");
        assertEquals(9, channels.size());
        assertEquals(1.0, channels.get(0).path("coverage_ratio").asDouble(), 1e-6);
    }

    @Test
    void ledgerLinesAddUpInTheFileToo() throws IOException {
        JsonNode boat = new ObjectMapper()
                .readTree(debrief("--json").out())
                .path("boats")
                .get(0);
        assertEquals(2, boat.path("ledger").size());
        for (JsonNode leg : boat.path("ledger")) {
            double sum = 0;
            for (JsonNode line : leg.path("lines")) {
                sum += line.path("loss_s").asDouble();
            }
            double total = leg.path("total_s").asDouble();
            // Five lines, each rounded to nine decimals.
            assertEquals(total, sum, 5e-9);
        }
    }

    @Test
    void sameInputsGiveTheSameBytesComputedOrKept() throws IOException {
        String computed = debrief("--json").out();
        assertEquals(computed, debrief("--json").out());
        for (Path file : kept("debrief.json")) {
            Files.delete(file);
        }
        assertEquals(computed, debrief("--json").out());
    }

    @Test
    void aSecondCallGivesWhatTheFirstKept() throws IOException {
        debrief();
        Path text = kept("debrief.txt").get(0);
        Files.writeString(text, "as kept");
        assertEquals("as kept", debrief().out());
    }

    @Test
    void whatWasKeptUnderOtherInputsIsNotGiven() throws IOException {
        String overGround = debrief().out();
        Files.writeString(kept("debrief.txt").get(0), "as kept");
        assertEquals(overGround, debrief("--speed", "over-ground").out().replace("asked for", "no log speed"));
        Files.writeString(kept("inputs.txt").get(0), "other inputs under the same folder's name");
        Files.writeString(kept("inputs.txt").get(1), "other inputs under the same folder's name");
        assertEquals(overGround, debrief().out());
    }

    @Test
    void aDebriefThatCannotBeKeptIsGivenAllTheSame() throws IOException {
        Path session = home.resolve("library/sessions/2027-01-15-dunlin");
        Files.writeString(session.resolve("derived"), "a file where the folder should be");
        assertEquals(0, debrief().exit());
        assertEquals(debrief().out(), debrief().out());
    }

    /** Files of that name among what was derived, in order of folder. */
    private List<Path> kept(String name) throws IOException {
        try (Stream<Path> files = Files.walk(home.resolve("library/sessions/2027-01-15-dunlin/derived"))) {
            return files.filter(file -> file.getFileName().toString().equals(name))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void textIsForPeople() {
        CliRun run = debrief();
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().startsWith("Debrief of 2027-01-15-dunlin, from 2027-01-15T08:00:00Z\n"), run.out());
        assertTrue(run.out().contains("bear-away"), run.out());
        assertTrue(run.out().contains("Upwash of the wing at the sensor is left in."), run.out());
        assertFalse(run.out().contains("NaN"), run.out());
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 160), run.out());
    }

    @Test
    void wrongInputIsOneLine() {
        for (String[] args : new String[][] {{"--speed", "fast"}, {"--boat", "nonesuch"}}) {
            CliRun run = debrief(args);
            assertEquals(2, run.exit());
            assertEquals(1, run.err().lines().count(), run.err());
            assertEquals("", run.out());
        }
        CliRun absent = CliRun.in(
                home, "debrief", "2001", "--library", home.resolve("library").toString());
        assertEquals(2, absent.exit());
        assertEquals(1, absent.err().lines().count(), absent.err());
    }

    private static List<String> texts(JsonNode array, String key) {
        List<String> texts = new ArrayList<>();
        array.forEach(node -> texts.add(node.path(key).asText()));
        return texts;
    }

    @Test
    void theReportIsOneFile() throws IOException {
        Path page = home.resolve("day.html");
        CliRun run = debrief("--html", page.toString());
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains(page.toString()));
        String html = Files.readString(page);
        assertTrue(html.contains("Dunlin"));
        assertTrue(html.contains("Judged by each boat"));
    }

    @Test
    void aReportThatCannotBeWrittenIsOneLine() {
        CliRun run = debrief("--html", home.resolve("no such folder/day.html").toString());
        assertEquals(2, run.exit());
        assertEquals(1, run.err().lines().count(), run.err());
    }

    private CliRun moment(String verb, String... more) {
        List<String> args = new ArrayList<>(List.of("moment", verb, "latest"));
        args.addAll(List.of(more));
        args.addAll(List.of("--library", home.resolve("library").toString()));
        return CliRun.in(home, args.toArray(String[]::new));
    }

    @Test
    void momentsAreMarkedByTimeOfDayOrSecondsAndWrittenAsPages() throws IOException {
        assertEquals(
                0,
                moment("add", "--at", "+130", "--seconds", "15", "--note", "a slow tack", "--tag", "tack")
                        .exit());
        CliRun list = moment("list", "--tag", "TACK");
        assertTrue(list.out().contains("a slow tack"), list.out());
        String at = list.out().lines().skip(1).findFirst().orElse("").split(" +")[1];
        assertEquals(0, moment("add", "--at", at, "--note", "the same").exit());
        JsonNode moments =
                new ObjectMapper().readTree(moment("list", "--json").out()).path("moments");
        assertEquals(130, moments.path(0).path("start_s").asDouble(), 1);
        assertEquals(130, moments.path(1).path("start_s").asDouble(), 1);
        Path page = home.resolve("tack.html");
        assertEquals(0, moment("export", "m1", "--html", page.toString()).exit());
        assertTrue(Files.readString(page).contains("a slow tack"));
        assertEquals(0, moment("drop", "m2").exit());
        CliRun none = moment("export", "m2", "--html", page.toString());
        assertEquals(2, none.exit());
        assertEquals(1, none.err().lines().count(), none.err());
    }
}
