package trimwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import trimwright.text.JsonOut;
import trimwright.text.NoAnswerException;
import trimwright.text.UserInputException;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WorkbenchTest {
    private final HttpClient client = HttpClient.newHttpClient();
    private Workbench workbench;

    @BeforeAll
    void start() {
        Routes faulty = routes -> {
            routes.get("/api/refuses", ctx -> {
                throw new NoAnswerException("No balance exists in 4 kn of wind.");
            });
            routes.get("/api/typo", ctx -> {
                throw new UserInputException("TWA is 200 deg; it is 0 to 180 deg.");
            });
            routes.get("/api/breaks", ctx -> {
                throw new IllegalStateException("secret detail");
            });
            routes.post("/api/changes", ctx -> Json.send(ctx, JsonOut.document("done/1")));
        };
        workbench = Workbench.start(List.of(faulty), 0);
    }

    @AfterAll
    void stop() {
        workbench.close();
    }

    @Test
    void theShellComesWithAStrictPolicyThatKnowsItsImportMap() throws Exception {
        HttpResponse<String> answer = get("/prepare");
        assertEquals(200, answer.statusCode());
        String policy = answer.headers().firstValue("Content-Security-Policy").orElseThrow();
        assertTrue(policy.startsWith("default-src 'none'; script-src 'self' 'sha256-"), policy);
        assertFalse(policy.contains("unsafe"), policy);
        assertTrue(answer.body().contains("importmap"));
    }

    @Test
    void pageFilesAndLibrariesAreServedAndAskedAgainByTag() throws Exception {
        for (String path : List.of(
                "/page/main.js",
                "/page/base.css",
                "/vendor/preact.js",
                "/vendor/hooks.js",
                "/vendor/htm.js",
                "/vendor/uplot.js",
                "/vendor/uplot.css")) {
            HttpResponse<String> first = get(path);
            assertEquals(200, first.statusCode(), path);
            String tag = first.headers().firstValue("ETag").orElseThrow();
            HttpRequest again = HttpRequest.newBuilder(
                            URI.create(workbench.address()).resolve(path))
                    .header("If-None-Match", tag)
                    .build();
            assertEquals(
                    304,
                    client.send(again, HttpResponse.BodyHandlers.discarding()).statusCode(),
                    path);
        }
    }

    @Test
    void nothingOutsideThePageFolderIsServed() throws Exception {
        assertEquals(400, get("/page/../../text/messages.properties").statusCode());
        assertEquals(400, get("/page/%2e%2e/%2e%2e/text/messages.properties").statusCode());
        assertEquals(404, get("/page/x/../../simplelogger.properties").statusCode());
        assertEquals(404, get("/page/index.html").statusCode());
        assertEquals(404, get("/vendor/nothing.js").statusCode());
    }

    @Test
    void aStrangersNameForThisMachineIsRefused() throws IOException {
        assertTrue(statusLineForHost("rebound.example:" + workbench.port()).contains(" 403 "));
        assertTrue(statusLineForHost("localhost:" + (workbench.port() + 1)).contains(" 403 "));
        assertTrue(statusLineForHost("localhost:" + workbench.port()).contains(" 200 "));
    }

    @Test
    void aChangeIsTakenFromOurOwnPagesOnly() throws Exception {
        assertEquals(403, post("/api/changes", "http://elsewhere.example").statusCode());
        assertEquals(403, post("/api/changes", null).statusCode());
        String own = "http://127.0.0.1:" + workbench.port();
        assertEquals(200, post("/api/changes", own).statusCode());
    }

    @Test
    void faultsAreOneSentenceOfJsonWithoutInnerDetail() throws Exception {
        HttpResponse<String> refused = get("/api/refuses");
        assertEquals(422, refused.statusCode());
        assertEquals("{\"schema\":\"fault/1\",\"message\":\"No balance exists in 4 kn of wind.\"}", refused.body());
        assertEquals(400, get("/api/typo").statusCode());
        HttpResponse<String> broken = get("/api/breaks");
        assertEquals(500, broken.statusCode());
        assertFalse(broken.body().contains("secret"), broken.body());
        HttpResponse<String> absent = get("/api/absent");
        assertEquals(404, absent.statusCode());
        assertTrue(absent.body().contains("/api/absent"), absent.body());
        assertEquals("no-store", absent.headers().firstValue("Cache-Control").orElseThrow());
    }

    @Test
    void aPortInUseIsOneClearLine() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            UserInputException fault = assertThrows(
                    UserInputException.class,
                    () -> Workbench.start(List.of(), taken.getLocalPort()).close());
            assertTrue(String.valueOf(fault.getMessage()).startsWith("Port " + taken.getLocalPort() + " on 127.0.0.1"));
        }
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        URI address = URI.create("http://127.0.0.1:" + workbench.port() + path);
        return client.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, @org.jspecify.annotations.Nullable String origin)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(
                        URI.create(workbench.address()).resolve(path))
                .POST(HttpRequest.BodyPublishers.noBody());
        if (origin != null) {
            request.header("Origin", origin);
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    /** By hand: the JDK's client does not let a test name another host. */
    private String statusLineForHost(String host) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), workbench.port())) {
            OutputStream out = socket.getOutputStream();
            out.write(("GET /api/text HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            out.flush();
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\r\n", 2)[0] + " ";
        }
    }
}
