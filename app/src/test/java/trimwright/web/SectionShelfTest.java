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
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.prepare.SectionSource;
import trimwright.prepare.Sections;
import trimwright.text.UserInputException;

class SectionShelfTest {
    private static final BoatFile BOAT = BoatFiles.find("whimbrel14");
    private static final WingSpec WING = BOAT.boat().getWing("tall");

    static SectionShelf closedForm(BoatShelf boats) {
        return new SectionShelf(boats, SectionSource.CLOSED_FORM, (wing, progress) -> {
            throw new AssertionError("nobody wants computed sections");
        });
    }

    @Test
    void whoWantsTheClosedFormGetsIt() {
        try (SectionShelf shelf = closedForm(new BoatShelf(List.of()))) {
            assertEquals(SectionSource.CLOSED_FORM, shelf.now(BOAT, WING).source());
        }
    }

    /** The making is held up in the middle by hand. */
    @Test
    void theClosedFormAnswersUntilTablesAreThere() throws IOException, InterruptedException {
        CountDownLatch half = new CountDownLatch(1);
        CountDownLatch rest = new CountDownLatch(1);
        SectionShelf shelf = new SectionShelf(new BoatShelf(List.of()), SectionSource.COMPUTED, (wing, progress) -> {
            progress.done(6);
            half.countDown();
            rest.await();
            progress.done(6);
            return new Sections(
                    SectionSource.COMPUTED, Sections.closedForm(wing).family());
        });
        try (Workbench workbench = Workbench.start(List.of(shelf), 0)) {
            assertEquals(SectionSource.CLOSED_FORM, shelf.now(BOAT, WING).source());
            assertTrue(half.await(60, TimeUnit.SECONDS));
            JsonNode before = ask(workbench);
            assertEquals("computed", before.path("wanted").asText());
            assertEquals("closed_form", before.path("section").asText());
            assertEquals(6, before.path("done").asInt());
            assertEquals(12, before.path("total").asInt());
            rest.countDown();
            JsonNode after = ask(workbench);
            for (int i = 0; i < 600 && after.path("section").asText().equals("closed_form"); i++) {
                Thread.sleep(100);
                after = ask(workbench);
            }
            assertEquals("computed", after.path("section").asText());
            assertEquals(12, after.path("done").asInt());
            assertEquals(SectionSource.COMPUTED, shelf.now(BOAT, WING).source());
        }
    }

    @Test
    void aWingThatCannotBeComputedStaysInClosedFormAndSaysWhy() throws IOException, InterruptedException {
        SectionShelf shelf = new SectionShelf(new BoatShelf(List.of()), SectionSource.COMPUTED, (wing, progress) -> {
            throw new UserInputException("no slot");
        });
        try (Workbench workbench = Workbench.start(List.of(shelf), 0)) {
            JsonNode said = ask(workbench);
            assertEquals("closed_form", said.path("section").asText());
            assertEquals("no slot", said.path("reason").asText());
        }
    }

    private static JsonNode ask(Workbench workbench) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(
                        URI.create(workbench.address() + "api/sections?boat=whimbrel14&wing=tall"))
                .build();
        return new ObjectMapper()
                .readTree(HttpClient.newHttpClient()
                        .send(request, HttpResponse.BodyHandlers.ofString())
                        .body());
    }
}
