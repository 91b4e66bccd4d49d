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
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import trimwright.cli.CliRun;
import trimwright.drills.StartPlanRun;
import trimwright.prepare.BookCache;
import trimwright.prepare.TargetBooks;

/** Plans are begun in the background; what cannot be planned is refused before anything is computed. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlanRoutesTest {
    private static final String BOAT = "?boat=whimbrel14&wing=tall";

    private final HttpClient client = HttpClient.newHttpClient();
    private Workbench workbench;

    @BeforeAll
    void start() throws IOException {
        BoatShelf boats = new BoatShelf(List.of());
        TargetShelf targets = new TargetShelf(
                boats,
                new TargetBooks(new BookCache(CliRun.sharedCache().resolve("targets"), note -> {})),
                SectionShelfTest.closedForm(boats));
        workbench = Workbench.start(List.of(new PlanRoutes(boats, targets)), 0);
    }

    @AfterAll
    void stop() {
        workbench.close();
    }

    private HttpResponse<String> ask(String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(workbench.address() + path)).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void whatCannotBePlannedIsRefused() throws IOException, InterruptedException {
        for (String wrong : List.of(
                "api/turn-plan" + BOAT + "&kind=loop&tws_kn=14",
                "api/turn-plan" + BOAT + "&kind=gybe&tws_kn=40",
                "api/start-plan" + BOAT + "&tws_kn=14&twa_deg=20",
                "api/start-plan" + BOAT + "&tws_kn=14")) {
            HttpResponse<String> answer = ask(wrong);
            assertEquals(400, answer.statusCode(), wrong + ": " + answer.body());
        }
    }

    @Test
    void aPlanTellsHowFarItHasCome() throws IOException, InterruptedException {
        Instant end = Instant.now().plus(Duration.ofMinutes(10));
        while (true) {
            HttpResponse<String> answer = ask("api/start-plan" + BOAT + "&tws_kn=14&twa_deg=100");
            assertEquals(202, answer.statusCode(), answer.body());
            JsonNode progress = new ObjectMapper().readTree(answer.body());
            // The book comes first, with steps of its own.
            if (progress.path("total").asLong() == StartPlanRun.steps(StartPlanRun.BOATS)
                    && progress.path("done").asLong() > 0) {
                return;
            }
            assertTrue(Instant.now().isBefore(end), "no progress in ten minutes");
            Thread.sleep(100);
        }
    }
}
