package trimwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boatfile.BoatFiles;
import trimwright.cli.CliRun;
import trimwright.prepare.BookCache;
import trimwright.prepare.TargetBooks;

/** Cards of the page are those of the commands. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CardRoutesTest {
    private static final Clock DAY = Clock.fixed(Instant.parse("2027-03-06T12:00:00Z"), ZoneOffset.UTC);

    private final HttpClient client = HttpClient.newHttpClient();
    private Workbench workbench;
    private Path home;

    @BeforeAll
    void start(@TempDir Path folder) throws IOException {
        home = folder;
        Path quiet = folder.resolve("quiet.toml");
        String text = BoatFiles.shippedText("whimbrel14");
        Files.writeString(quiet, text.substring(0, text.indexOf("[handling]")));
        BoatShelf boats = new BoatShelf(List.of(quiet));
        TargetShelf targets = new TargetShelf(
                boats,
                new TargetBooks(new BookCache(CliRun.sharedCache().resolve("targets"), note -> {})),
                SectionShelfTest.closedForm(boats));
        workbench = Workbench.start(List.of(new CardRoutes(boats, targets, DAY)), 0);
    }

    @AfterAll
    void stop() {
        workbench.close();
    }

    /** The answer when the work is done; asked for again like a page does. */
    private HttpResponse<byte[]> ask(String path) throws IOException, InterruptedException {
        Instant end = Instant.now().plus(Duration.ofMinutes(10));
        while (true) {
            HttpRequest request = HttpRequest.newBuilder(URI.create(workbench.address() + path.substring(1)))
                    .build();
            HttpResponse<byte[]> answer = client.send(request, HttpResponse.BodyHandlers.ofByteArray());
            if (answer.statusCode() != 202) {
                return answer;
            }
            assertTrue(Instant.now().isBefore(end), "no answer in ten minutes: " + path);
            Thread.sleep(300);
        }
    }

    private JsonNode json(String path) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = ask(path);
        assertEquals(200, answer.statusCode(), path);
        return new ObjectMapper().readTree(answer.body());
    }

    private JsonNode command(String... args) throws IOException {
        CliRun run = CliRun.in(home, args);
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void gustsAndLoadsAreThoseOfTheCommands() throws Exception {
        JsonNode gust = json("/api/gust?boat=whimbrel14&wing=tall&tws_kn=16");
        assertEquals(
                command(
                        "gust",
                        "--boat",
                        "whimbrel14",
                        "--wing",
                        "tall",
                        "--tws",
                        "16",
                        "--change",
                        "-4,-2,2,4,6",
                        "--json"),
                gust);
        JsonNode loads = json("/api/loads?boat=whimbrel14&wing=tall&tws_kn=16");
        assertEquals(command("loads", "--boat", "whimbrel14", "--wing", "tall", "--tws", "16", "--json"), loads);
    }

    /** A foil set is one more boat of the shelf, and its figures those of the command with that set. */
    @Test
    void anotherFoilSetIsOneMoreBoat() throws Exception {
        JsonNode loads = json("/api/loads?boat=whimbrel14~light&wing=tall&tws_kn=16");
        assertEquals(
                command("loads", "--boat", "whimbrel14", "--wing", "tall", "--foils", "light", "--tws", "16", "--json"),
                loads);
        assertEquals("light", loads.path("foils").asText());
        assertEquals(
                400, ask("/api/loads?boat=whimbrel14~large&wing=tall&tws_kn=16").statusCode());
        assertEquals(
                List.of("quiet", "quiet~light", "whimbrel14", "whimbrel14~light"),
                new BoatShelf(List.of(home.resolve("quiet.toml")))
                        .list().stream().map(BoatShelf.Entry::id).toList());
    }

    @Test
    void theCardIsAPdfOfTheWindsAsked() throws Exception {
        HttpResponse<byte[]> answer = ask("/api/card.pdf?boat=whimbrel14&wing=tall&tws_kn=10,16,22");
        assertEquals(200, answer.statusCode());
        assertEquals(
                "application/pdf", answer.headers().firstValue("Content-Type").orElse(""));
        try (PDDocument document = Loader.loadPDF(answer.body())) {
            String text = new PDFTextStripper().getText(document);
            assertEquals(6, document.getNumberOfPages());
            assertTrue(text.contains("2027-03-06"), text);
            for (String wind : List.of("10", "16", "22")) {
                assertTrue(
                        text.lines().anyMatch(line -> line.strip().equals(wind) || line.startsWith(wind + " ")), wind);
            }
        }
    }

    /** The screen's card has the printed one's words. */
    @Test
    void theCardOnTheScreenSaysWhatThePrintedOneSays() throws Exception {
        JsonNode page = json("/api/card?boat=whimbrel14&wing=tall&tws_kn=10,16,22");
        assertEquals("card-page/1", page.path("schema").asText());
        assertEquals("2027-03-06", page.path("date").asText());
        try (PDDocument document = Loader.loadPDF(
                ask("/api/card.pdf?boat=whimbrel14&wing=tall&tws_kn=10,16,22").body())) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertTrue(text.contains(page.path("caution").asText()), text);
            assertTrue(text.contains(page.path("origin").asText()), text);
            for (JsonNode side : page.path("sides")) {
                assertTrue(text.contains(side.path("title").asText()), text);
                assertEquals(3, side.path("rows").size());
                for (JsonNode row : side.path("rows")) {
                    for (JsonNode cell : row.path("cells")) {
                        assertTrue(text.contains(cell.path("main").asText()), cell.toString());
                        assertTrue(text.contains(cell.path("below").asText()), cell.toString());
                    }
                }
            }
        }
    }

    @Test
    void whatCannotBeAnsweredIsOneSentence() throws Exception {
        assertEquals(400, ask("/api/gust?boat=whimbrel14&wing=tall").statusCode());
        assertEquals(400, ask("/api/gust?boat=whimbrel14&wing=tall&tws_kn=13").statusCode());
        assertEquals(
                400,
                ask("/api/card.pdf?boat=whimbrel14&wing=tall&tws_kn=6,8,10,12,14,16")
                        .statusCode());
        HttpResponse<byte[]> quiet = ask("/api/loads?boat=quiet&wing=tall&tws_kn=16");
        assertEquals(400, quiet.statusCode());
        assertTrue(new String(quiet.body(), StandardCharsets.UTF_8).contains("[handling]"));
    }
}
