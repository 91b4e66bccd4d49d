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
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boatfile.BoatFiles;
import trimwright.prepare.TargetBooks;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExploreRoutesTest {
    private static final String STATE = "&wing=tall&aws_kn=30&awa_deg=20&camber_deg=15&twist_deg=8&sheet_deg=6";

    private final HttpClient client = HttpClient.newHttpClient();
    private Workbench workbench;
    private Path copy;

    @BeforeAll
    void start(@TempDir Path folder) throws IOException {
        copy = folder.resolve("mine.toml");
        Files.writeString(copy, BoatFiles.shippedText("whimbrel14"));
        BoatShelf boats = new BoatShelf(List.of(copy));
        workbench = Workbench.start(
                List.of(new ExploreRoutes(
                        boats, new TargetShelf(boats, new TargetBooks(), SectionShelfTest.closedForm(boats)))),
                0);
    }

    @AfterAll
    void stop() {
        workbench.close();
    }

    @Test
    void threeSectionsAreDrawnAtStripsOfTheAnswer() throws Exception {
        JsonNode answer = json("/api/explore?boat=whimbrel14&strip=12" + STATE);
        JsonNode strips = answer.path("wing").path("strips");
        JsonNode stations = answer.path("stations");
        assertEquals(3, stations.size());
        double[] heights = {4, 12, 35};
        for (int i = 0; i < 3; i++) {
            JsonNode strip = strips.path((int) heights[i]);
            JsonNode station = stations.path(i);
            assertEquals(
                    strip.path("height_above_foot_m").asDouble(),
                    station.path("height_m").asDouble(),
                    0);
            assertEquals(
                    strip.path("chord_m").asDouble(), station.path("chord_m").asDouble(), 1e-4);
            assertEquals(
                    strip.path("flap_angle_deg").asDouble(),
                    station.path("flap_deg").asDouble(),
                    2e-3);
        }
    }

    @Test
    void whatIsMissingOrOutsideItsRangeIsOneSentence() throws Exception {
        assertRefused(400, "/api/explore?boat=whimbrel14&wing=tall&camber_deg=15&sheet_deg=6", "aws_kn");
        assertRefused(
                400, "/api/explore?boat=whimbrel14&sheet_deg=61" + STATE.replace("&sheet_deg=6", ""), "sheet_deg");
        assertRefused(400, "/api/explore?boat=whimbrel14&strip=40" + STATE, "strip");
        assertRefused(404, "/api/explore?boat=nobody" + STATE, "nobody");
        assertRefused(404, "/api/explore?boat=whimbrel14" + STATE.replace("tall", "huge"), "huge");
        assertRefused(400, "/api/explore/target?boat=whimbrel14&wing=tall&tws_kn=14&twa_deg=200", "twa_deg");
    }

    @Test
    void aChangedBoatFileCountsOnceThePageHasSeenIt() throws Exception {
        String seen = json("/api/explore?boat=mine" + STATE)
                .at("/wing/model/boat_hash")
                .asText();
        String text = Files.readString(copy);
        Files.writeString(copy, text.replaceFirst("foot_height_m = 1.5", "foot_height_m = 2.5"));
        try {
            JsonNode same = json("/api/explore?boat=mine&hash=" + seen + STATE);
            assertEquals(seen, same.at("/wing/model/boat_hash").asText());
            JsonNode anew = json("/api/explore?boat=mine&hash=other" + STATE);
            assertTrue(!seen.equals(anew.at("/wing/model/boat_hash").asText()));
            // Higher above the sea more air leaks under the foot: less side force.
            assertTrue(anew.at("/wing/side_force_n").asDouble()
                    < same.at("/wing/side_force_n").asDouble());
        } finally {
            Files.writeString(copy, text);
        }
    }

    @Test
    void theRangesAreThoseOfTheBoatFile() throws Exception {
        JsonNode ranges = json("/api/explore/range?boat=whimbrel14&wing=tall").path("ranges");
        assertEquals(38, ranges.at("/camber_deg/1").asDouble());
        assertEquals(60, ranges.at("/sheet_deg/1").asDouble());
        assertEquals(0, ranges.at("/boat_speed_kn/0").asDouble());
    }

    private void assertRefused(int status, String path, String said) throws Exception {
        HttpResponse<String> answer = get(path);
        assertEquals(status, answer.statusCode(), path);
        String message =
                new ObjectMapper().readTree(answer.body()).path("message").asText();
        assertTrue(message.contains(said), message);
        assertEquals(1, message.lines().count(), message);
    }

    private JsonNode json(String path) throws Exception {
        HttpResponse<String> answer = get(path);
        assertEquals(200, answer.statusCode(), answer.body());
        return new ObjectMapper().readTree(answer.body());
    }

    private HttpResponse<String> get(String path) throws Exception {
        URI address = URI.create(workbench.address()).resolve(path);
        return client.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
    }
}
