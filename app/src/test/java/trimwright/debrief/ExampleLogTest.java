package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.Boat;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.cli.CliRun;
import trimwright.compare.Cause;
import trimwright.compare.LegLedger;
import trimwright.ingest.IngestResult;
import trimwright.ingest.csv.CsvColumn;
import trimwright.ingest.csv.CsvMapping;
import trimwright.ingest.csv.CsvReader;
import trimwright.ingest.csv.CsvSelector;
import trimwright.ingest.csv.CsvUnit;
import trimwright.ingest.nmea.NmeaOptions;
import trimwright.ingest.nmea.NmeaReader;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.segment.Matching;
import trimwright.segment.OffFoil;
import trimwright.segment.Piece;
import trimwright.segment.Span;
import trimwright.segment.Turn;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.text.Progress;
import trimwright.track.BoatTrack;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.track.TrackMerge;
import trimwright.wind.Quantity;
import trimwright.wind.WindCaveat;
import trimwright.wind.WindOptions;

/** The example log that the project ships, against the story that made it. */
class ExampleLogTest {
    private static final Path ROOT = Path.of(System.getProperty("trimwright.root", ".."));
    private static final Path FOLDER = ROOT.resolve("examples/saltmere");
    private static final double KNOT = 1852.0 / 3600.0;

    @Test
    void theProgramInStudiesMakesItByteForByte(@TempDir Path made) throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process process = new ProcessBuilder(
                        java,
                        ROOT.resolve("studies/example-log/ExampleLog.java").toString(),
                        made.toString())
                .inheritIO()
                .start();
        assertEquals(0, process.waitFor());
        for (String name : List.of("dunlin.nmea", "dunlin-wing.csv", "story.csv")) {
            assertArrayEquals(Files.readAllBytes(FOLDER.resolve(name)), Files.readAllBytes(made.resolve(name)), name);
        }
    }

    private static CsvColumn column(String name, String path, CsvUnit unit) {
        return new CsvColumn(CsvSelector.named(name), path, unit, CsvColumn.Sense.SAME);
    }

    private static BoatDebrief debrief(DebriefOptions options) throws IOException {
        CsvMapping mapping = new CsvMapping(
                new CsvMapping.TextForm(StandardCharsets.UTF_8, ',', '.', "wing"),
                1,
                1,
                List.of(CsvSelector.named("time_utc")),
                "iso",
                ZoneOffset.UTC,
                null,
                List.of(
                        column("camber_deg", Paths.CAMBER, CsvUnit.DEGREE),
                        column("twist_deg", Paths.TWIST, CsvUnit.DEGREE),
                        column("sheet_deg", Paths.SHEET, CsvUnit.DEGREE),
                        column("sheet_load_n", Paths.SHEET_LOAD, CsvUnit.NEWTON),
                        column("ride_height_m", Paths.RIDE_HEIGHT, CsvUnit.METRE)));
        List<ChannelGroup> groups = Stream.of(
                        NmeaReader.read(Files.readAllBytes(FOLDER.resolve("dunlin.nmea")), NmeaOptions.of("Dunlin")),
                        CsvReader.read(Files.readAllBytes(FOLDER.resolve("dunlin-wing.csv")), mapping, "Dunlin", null))
                .map(result -> assertInstanceOf(IngestResult.Tracks.class, result))
                .flatMap(tracks -> tracks.tracks().get(0).groups().stream())
                .toList();
        BoatTrack track = TrackMerge.of("Dunlin", groups);
        return Debrief.of(List.of(track), options).boats().get(0);
    }

    private static BoatDebrief debriefWithBoat() throws IOException {
        Boat boat = BoatFiles.find("whimbrel14").boat();
        return debrief(new DebriefOptions(boat, null, null, WindOptions.DEFAULT));
    }

    /** Turns and touch-downs as they were ordered; the story's own words for kinds. */
    private static List<Matching.Labelled> story() throws IOException {
        List<Matching.Labelled> story = new ArrayList<>();
        for (String line : Files.readAllLines(FOLDER.resolve("story.csv"))) {
            String[] cells = line.split(",", -1);
            if (!cells[0].equals("start_s")) {
                story.add(new Matching.Labelled(cells[2], Double.parseDouble(cells[0]), Double.parseDouble(cells[1])));
            }
        }
        return story;
    }

    private static Matching.Labelled labelled(BoatDebrief boat, Piece piece) {
        String kind = piece instanceof OffFoil ? "touch_down" : DebriefJson.word(piece.kind());
        Span span = piece.span();
        return new Matching.Labelled(
                kind,
                boat.wind().clock().seconds(span.from()),
                boat.wind().clock().seconds(span.to()));
    }

    @Test
    void everyTurnAndTouchDownOfTheStoryIsFoundAndNothingElse() throws IOException {
        BoatDebrief boat = debriefWithBoat();
        List<Matching.Labelled> found = new ArrayList<>();
        for (Turn turn : boat.pieces().turns()) {
            found.add(labelled(boat, turn));
        }
        for (OffFoil spell : boat.pieces().offFoil()) {
            found.add(labelled(boat, spell));
        }
        Matching.Count count = Matching.count(found, story());
        assertEquals(9, count.truth());
        assertEquals(1.0, count.recall(), found.toString());
        assertEquals(1.0, count.precision(), found.toString());
    }

    @Test
    void windIsThatOfTheStory() throws IOException {
        BoatDebrief boat = debriefWithBoat();
        double speedError = 0;
        double directionError = 0;
        int count = 0;
        for (int i = 0; i < boat.wind().size(); i++) {
            double t = boat.wind().clock().seconds(i);
            double tws = boat.wind().get(Quantity.TWS, i);
            if (Double.isNaN(tws)) {
                continue;
            }
            double puff = 4 * bump(t, 150, 12) + 2 * bump(t, 440, 15) - 2.5 * bump(t, 560, 18);
            double truth = (14 + 0.8 * Math.sin(t / 43) + puff) * KNOT;
            double from = Math.toRadians(245 + 6 * Math.sin(2 * Math.PI * t / 310) + 3 * bump(t, 150, 15));
            speedError += square(tws - truth);
            directionError += square(Math.IEEEremainder(boat.wind().get(Quantity.TWD, i) - from, 2 * Math.PI));
            count++;
        }
        assertTrue(count > 0.95 * boat.wind().size(), "wind at " + count);
        assertTrue(Math.sqrt(speedError / count) < 0.8 * KNOT, "rms kn " + Math.sqrt(speedError / count) / KNOT);
        assertTrue(
                Math.toDegrees(Math.sqrt(directionError / count)) < 3,
                "rms deg " + Math.toDegrees(Math.sqrt(directionError / count)));
    }

    private static double bump(double t, double at, double width) {
        return Math.exp(-(t - at) * (t - at) / (width * width));
    }

    private static double square(double x) {
        return x * x;
    }

    @Test
    void theShippedFilesAreImportedByTheirMappingAndDebriefed(@TempDir Path home) throws IOException {
        String library = home.resolve("library").toString();
        CliRun imported = CliRun.in(
                home,
                "import",
                FOLDER.resolve("dunlin.nmea").toString(),
                FOLDER.resolve("dunlin-wing.csv").toString(),
                "--map",
                FOLDER.resolve("wing-map.toml").toString(),
                "--library",
                library);
        assertEquals(0, imported.exit(), imported.err());
        CliRun debriefed = CliRun.in(home, "debrief", "latest", "--json", "--library", library);
        assertEquals(0, debriefed.exit(), debriefed.err());
        JsonNode boats = new ObjectMapper().readTree(debriefed.out()).path("boats");
        assertEquals(1, boats.size());
        assertEquals(7, boats.get(0).path("turns").size());
        assertTrue(boats.get(0).path("phases").get(0).path("camber_deg").asDouble() > 15);
    }

    @Test
    void computedTargetsJudgeItAndTheLedgerAddsUp() throws IOException, InterruptedException {
        BoatFile file = BoatFiles.find("whimbrel14");
        TargetGrid grid = new TargetGrid(
                Stream.of(12.0, 15.0, 18.0).map(knots -> knots * KNOT).toList(),
                Stream.of(50.0, 95.0, 140.0).map(Math::toRadians).toList());
        TargetRequest request = new TargetRequest(file, file.boat().getWing("tall"), grid, Map.of());
        TargetBook book = TargetRun.of(request, Progress.NONE);
        BoatDebrief boat = debrief(new DebriefOptions(file.boat(), book, null, WindOptions.DEFAULT));
        assertEquals("target", boat.comparison().reference());
        assertFalse(boat.wind().caveats().contains(WindCaveat.WIND_AT_SENSOR_HEIGHT));
        assertTrue(boat.comparison().phases().stream().allMatch(phase -> phase.difference() != null));
        for (LegLedger ledger : boat.comparison().ledgers()) {
            double sum =
                    ledger.lines().stream().mapToDouble(LegLedger.Line::loss).sum();
            assertEquals(ledger.total(), sum, 1e-9 * Math.max(1, Math.abs(ledger.total())));
            // Each leg has one touch-down of nine seconds at a third of its speed, straight out of a turn, and so the
            // turn's.
            assertEquals(0, ledger.lines().get(Cause.OFF_FOIL.ordinal()).loss());
            double turns = ledger.lines().get(Cause.TURNS_FREE.ordinal()).loss();
            assertTrue(turns > 2, "turns " + turns);
        }
    }

    @Test
    void theDropoutOfTheWindIsShown() throws IOException {
        BoatDebrief boat = debriefWithBoat();
        var wind = boat.quality().stream()
                .filter(summary -> summary.path().equals(Paths.AWA))
                .findFirst()
                .orElseThrow();
        assertEquals(1, wind.gaps());
        assertEquals(8, wind.longestGap(), 0.6);
    }

    @Test
    void withoutABoatFileItIsSaidThatTheSensorMayTurnWithTheWing() throws IOException {
        BoatDebrief boat = debrief(DebriefOptions.WITHOUT_BOAT);
        assertTrue(boat.wind().caveats().contains(WindCaveat.SENSOR_TAKEN_AS_FIXED));
    }
}
