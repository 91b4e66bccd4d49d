package trimwright.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.DoubleBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.cli.CliRun;
import trimwright.debrief.Debrief;
import trimwright.debrief.DebriefOptions;
import trimwright.debrief.DebriefReport;
import trimwright.debrief.DebriefRequest;
import trimwright.debrief.KeptDebriefs;
import trimwright.prepare.SectionSource;
import trimwright.store.Library;
import trimwright.store.LibraryWriter;
import trimwright.store.SessionInfo;
import trimwright.store.SourceInfo;
import trimwright.text.JsonOut;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.wind.WindOptions;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SessionRoutesTest {
    private static final long START = 1_600_000_000L;
    private static final int SECONDS = 5000;

    private final HttpClient client = HttpClient.newHttpClient();
    private Library library;
    private Workbench workbench;
    private String base;

    @BeforeAll
    void start(@TempDir Path folder) throws NoSuchAlgorithmException {
        library = Library.openOrCreate(folder);
        byte[] bytes = {1};
        String hash =
                HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        SourceInfo source = new SourceInfo(hash, "a.csv", "csv", 1, 5000, Map.of("bad_number", 2L), List.of());
        try (LibraryWriter writer = library.writer()) {
            writer.add(
                    "trial",
                    List.of(new LibraryWriter.SourcedTrack(track(), hash)),
                    List.of(new LibraryWriter.RawSource(source, () -> new ByteArrayInputStream(bytes), null)));
        }
        workbench = Workbench.start(Services.of(library, List.of()), 0);
        base = "api/sessions/2020-09-13-trial/boats/Dunlin";
    }

    /** A speed of 3600 s/h times the second's number in nautical miles: as many knots as seconds, but for one spike. */
    private static BoatTrack track() {
        long[] times = new long[SECONDS];
        double[] speed = new double[SECONDS];
        double[] latitude = new double[SECONDS];
        double[] longitude = new double[SECONDS];
        for (int i = 0; i < SECONDS; i++) {
            times[i] = (START + i) * 1_000_000_000L;
            speed[i] = i * 1852.0 / 3600;
            latitude[i] = Math.toRadians(10 + i / 60.0 / 1000);
            longitude[i] = Math.toRadians(-35);
        }
        speed[1234] = -7 * 1852.0 / 3600;
        return new BoatTrack(
                "Dunlin",
                List.of(new ChannelGroup(
                        "gnss",
                        times,
                        List.of(
                                Channel.of(Paths.SOG, speed),
                                Channel.of(Paths.LATITUDE, latitude),
                                Channel.of(Paths.LONGITUDE, longitude)))));
    }

    @AfterAll
    void stop() {
        workbench.close();
        library.close();
    }

    @Test
    void sessionsNameTheirBoatsAndSources() throws Exception {
        JsonNode session = json("api/sessions").get("sessions").get(0);
        assertEquals("2020-09-13-trial", session.get("session").asText());
        assertEquals("2020-09-13T12:26:40Z", session.get("start_utc").asText());
        assertEquals(SECONDS - 1, session.get("duration_s").asDouble());
        assertEquals("Dunlin", session.get("boats").get(0).get("boat").asText());
        assertEquals(
                2, session.get("sources").get(0).get("issues").get("bad_number").asInt());
    }

    @Test
    void theListIsByteForByteThatOfTheCommand() throws Exception {
        String folder = library.folder().toString();
        CliRun command = CliRun.in(library.folder(), "sessions", "--json", "--library", folder);
        assertEquals(command.out(), new String(get("api/sessions").body(), StandardCharsets.UTF_8));
    }

    @Test
    void aSessionIsWhatTheLibraryHoldsOfIt() throws Exception {
        Path file = library.folder().resolve("sessions/2020-09-13-trial/session.json");
        JsonNode held = JsonOut.mapper().readTree(Files.readString(file));
        assertEquals(held, json("api/sessions/latest"));
        // Longitude 35 degrees west: the zone from 37.5 to 22.5 degrees west.
        assertEquals(-2 * 3600, held.get("utc_offset_s").asInt());
        assertEquals("longitude", held.get("utc_offset_from").asText());
    }

    @Test
    void aChartOfAFewSamplesHasThemAllInKnots() throws Exception {
        double[][] columns =
                columns(base + "/chart?channel=" + Paths.SOG + "&from=1600000100&to=1600000104&buckets=800");
        assertEquals(2, columns.length);
        assertEquals(START + 100, columns[0][0], 1e-6);
        assertEquals(100, columns[1][0], 1e-9);
        assertEquals(104, columns[1][4], 1e-9);
    }

    @Test
    void aThinnedChartKeepsTheSpike() throws Exception {
        double[][] columns =
                columns(base + "/chart?channel=" + Paths.SOG + "&from=1600000000&to=1600005000&buckets=20");
        assertTrue(columns[0].length <= 40, columns[0].length + " samples");
        boolean found = false;
        for (double value : columns[1]) {
            found |= Math.abs(value + 7) < 1e-9;
        }
        assertTrue(found);
    }

    @Test
    void theTrackIsInMetresNorthAndEast() throws Exception {
        double[][] columns = columns(base + "/track?from=1600000000&to=1600005000&positions=5000");
        assertEquals(3, columns.length);
        assertArrayEquals(new double[] {START, 0, 0}, new double[] {columns[0][0], columns[1][0], columns[2][0]});
        // A thousandth of a minute of latitude: 1.843 m at 10 degrees (WGS 84 meridian radius 6,337,358 m, computed
        // here).
        double e2 = 2 / 298.257223563 - 1 / (298.257223563 * 298.257223563);
        double sine = Math.sin(Math.toRadians(10));
        double radius = 6378137 * (1 - e2) / Math.pow(1 - e2 * sine * sine, 1.5);
        assertEquals(radius * Math.toRadians(1 / 60.0), columns[1][1000], 0.05);
        assertEquals(0, columns[2][1000], 0.01);
    }

    @Test
    void theDebriefIsThatOfTheCommand() throws Exception {
        HttpResponse<byte[]> answer = get("api/sessions/latest/debrief");
        while (answer.statusCode() == 202) {
            Thread.sleep(20);
            answer = get("api/sessions/latest/debrief");
        }
        CliRun command = CliRun.in(
                library.folder(),
                "debrief",
                "latest",
                "--json",
                "--library",
                library.folder().toString());
        assertEquals(JsonOut.mapper().readTree(command.out()), JsonOut.mapper().readTree(answer.body()));
        JsonNode channels = json(base + "/channels").get("channels");
        assertTrue(channels.toString().contains(Paths.SOG));
    }

    @Test
    void whatDoesNotExistIsSaidInOneSentence() throws Exception {
        refused(404, "There is no session \"2019-x\" in this library.", "api/sessions/2019-x");
        refused(
                404,
                "Session 2020-09-13-trial has no boat \"Curlew\".",
                base.replace("Dunlin", "Curlew") + "/channels");
        refused(404, "There is no channel \"x\" in this track.", base + "/chart?channel=x&from=1&to=2");
        refused(400, "The request lacks \"to\".", base + "/chart?channel=x&from=1");
        refused(400, "buckets is \"many\"; it is a number from 1 to 8000.", base + "/chart?from=1&to=2&buckets=many");
    }

    private void refused(int status, String sentence, String path) throws Exception {
        HttpResponse<byte[]> answer = get(path);
        assertEquals(status, answer.statusCode());
        assertEquals(
                sentence,
                JsonOut.mapper().readTree(answer.body()).get("message").asText());
    }

    @Test
    void aPageKeepsItsDebriefForTheCommandAndSaysWhatJudgedLast() throws Exception {
        SessionInfo session = library.getSession("latest");
        HttpResponse<byte[]> answer = get("api/sessions/latest/debrief");
        while (answer.statusCode() == 202) {
            Thread.sleep(20);
            answer = get("api/sessions/latest/debrief");
        }
        KeptDebriefs kept = new KeptDebriefs(library.derived(session));
        KeptDebriefs.Printed printed = kept.find(new DebriefRequest(session, null, null, null, WindOptions.DEFAULT));
        assertNotNull(printed);
        assertEquals(printed.json(), new String(answer.body(), StandardCharsets.UTF_8));
        assertTrue(json("api/sessions/latest/judge").get("boat").isNull(), "nothing judged it but its own best");
        BoatFile file = BoatFiles.find("whimbrel14");
        WingSpec wing = file.boat().getWing("tall");
        String inputs = new DebriefRequest(session, file, wing, null, WindOptions.DEFAULT).inputs();
        assertNotNull(inputs);
        library.derived(session).keep(inputs, Map.of("debrief.json", "{}"));
        JsonNode judge = json("api/sessions/latest/judge");
        assertEquals("whimbrel14", judge.get("boat").asText());
        assertEquals("tall", judge.get("wing").asText());
    }

    @Test
    void aKeptDebriefNamesTheSectionsThatItsTargetsCameFrom() throws Exception {
        SessionInfo session = library.getSession("latest");
        BoatFile file = BoatFiles.find("whimbrel14");
        WingSpec wing = file.boat().getWing("tall");
        DebriefReport report = Debrief.of(library.load(session), DebriefOptions.WITHOUT_BOAT);
        KeptDebriefs kept = new KeptDebriefs(library.derived(session));
        for (SectionSource section : SectionSource.values()) {
            KeptDebriefs.Printed printed = kept.print(
                    new DebriefRequest(session, file, wing, null, WindOptions.DEFAULT, section, List.of(), null, null),
                    report);
            assertEquals(
                    section.key(),
                    JsonOut.mapper().readTree(printed.json()).get("section").asText());
            String words = section == SectionSource.COMPUTED ? "tables of computed flow" : "closed form";
            assertTrue(printed.text().lines().anyMatch(line -> line.contains("tall") && line.contains(words)));
        }
        KeptDebriefs.Printed ownBest =
                kept.print(new DebriefRequest(session, null, null, null, WindOptions.DEFAULT), report);
        assertTrue(JsonOut.mapper().readTree(ownBest.json()).get("section").isNull());
        assertFalse(ownBest.text().contains("closed form"));
    }

    private JsonNode json(String path) throws Exception {
        HttpResponse<byte[]> answer = get(path);
        assertEquals(200, answer.statusCode());
        return JsonOut.mapper().readTree(answer.body());
    }

    private double[][] columns(String path) throws Exception {
        HttpResponse<byte[]> answer = get(path);
        assertEquals(200, answer.statusCode());
        DoubleBuffer numbers =
                ByteBuffer.wrap(answer.body()).order(ByteOrder.LITTLE_ENDIAN).asDoubleBuffer();
        assertEquals(1, numbers.get());
        double[][] columns = new double[(int) numbers.get()][];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = new double[(int) numbers.get()];
        }
        for (double[] column : columns) {
            numbers.get(column);
        }
        assertEquals(0, numbers.remaining());
        return columns;
    }

    private HttpResponse<byte[]> get(String path) throws Exception {
        return client.send(
                HttpRequest.newBuilder(URI.create(workbench.address() + path)).build(),
                HttpResponse.BodyHandlers.ofByteArray());
    }

    @Test
    void momentsAreKeptListedShownAndDropped() throws Exception {
        String all = "api/sessions/2020-09-13-trial/moments";
        HttpResponse<String> kept = change(
                "POST",
                all,
                "{\"start_s\": 100, \"duration_s\": 30, \"boat\": \"dunlin\", \"note\": \"fast <here>\", \"tags\": [\"gust\", \" \"]}");
        assertEquals(200, kept.statusCode(), kept.body());
        JsonNode moment = json(all).get("moments").get(0);
        assertEquals("Dunlin", moment.get("boat").asText());
        assertEquals(1, moment.get("tags").size());
        HttpResponse<byte[]> page = get(all + "/" + moment.get("id").asText() + "/page");
        String html = new String(page.body(), StandardCharsets.UTF_8);
        assertTrue(html.contains("fast &lt;here&gt;"), html);
        assertTrue(page.headers()
                .firstValue("Content-Security-Policy")
                .orElse("")
                .startsWith("default-src 'none'; style"));
        // As many knots as seconds: the mean from the 100th to the 129th.
        assertTrue(html.contains(">114.5<"), html);
        assertEquals(
                400,
                change("POST", all, "{\"start_s\": 1, \"duration_s\": 30, \"note\": \" \"}")
                        .statusCode());
        assertEquals(
                200, change("DELETE", all + "/" + moment.get("id").asText(), "").statusCode());
        assertEquals(400, change("DELETE", all + "/m1", "").statusCode());
        assertEquals(0, json(all).get("moments").size());
    }

    @Test
    void turnsAreAskedForByKind() throws Exception {
        HttpResponse<byte[]> answer = get("api/sessions/latest/turns?kind=tack");
        while (answer.statusCode() == 202) {
            Thread.sleep(20);
            answer = get("api/sessions/latest/turns?kind=tack");
        }
        JsonNode turns = JsonOut.mapper().readTree(answer.body());
        assertEquals("turns/1", turns.get("schema").asText());
        assertEquals(0, turns.get("turns").size());
        assertEquals(400, get("api/sessions/latest/turns?kind=roll").statusCode());
    }

    private HttpResponse<String> change(String method, String path, String body) throws Exception {
        String address = workbench.address().toString();
        return client.send(
                HttpRequest.newBuilder(URI.create(address + path))
                        .header("Origin", address.substring(0, address.length() - 1))
                        .method(method, HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }
}
