package trimwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.net.http.WebSocketHandshakeException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.ingest.journal.JournalSource;
import trimwright.live.LiveBoat;
import trimwright.recording.EventMode;
import trimwright.recording.LiveBoard;

class LiveRoutesTest {
    private static final long SECOND = 1_000_000_000L;
    private static final long START = 1_778_328_000L * SECOND;

    private final ObjectMapper mapper = new ObjectMapper();

    private static void sail(LiveBoard board, String boat, int tenths, double metresPerSecond) {
        JournalSource source =
                new JournalSource(JournalSource.Protocol.SIGNALK, JournalSource.Framing.PACKETS, boat, boat);
        long now = START + tenths * SECOND / 10;
        String delta = String.format(
                Locale.ROOT,
                "{\"updates\":[{\"values\":[{\"path\":\"navigation.speedOverGround\",\"value\":%.3f}]}]}",
                metresPerSecond);
        board.take(source, now, delta.getBytes(StandardCharsets.US_ASCII));
        board.tick(now);
    }

    private static LiveBoard board(EventMode mode) {
        return new LiveBoard(() -> new LiveBoat(null, null, null), "dunlin", mode, 0);
    }

    /** Collects frames as they come; a reader that does not read asks for none. */
    private static final class Frames implements WebSocket.Listener {
        private final BlockingQueue<String> frames = new LinkedBlockingQueue<>();
        private final StringBuilder part = new StringBuilder();
        private final boolean reads;

        Frames(boolean reads) {
            this.reads = reads;
        }

        @Override
        public void onOpen(WebSocket socket) {
            if (reads) {
                socket.request(1);
            }
        }

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            part.append(data);
            if (last) {
                frames.add(part.toString());
                part.setLength(0);
            }
            socket.request(1);
            return null;
        }
    }

    private static WebSocket open(Workbench pages, Frames frames, String origin) {
        return HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .header("Origin", origin)
                .buildAsync(URI.create("ws://127.0.0.1:" + pages.port() + "/ws/live"), frames)
                .join();
    }

    private JsonNode next(Frames frames) throws Exception {
        String frame = frames.frames.poll(20, TimeUnit.SECONDS);
        assertNotNull(frame, "no frame within 20 s");
        return mapper.readTree(frame);
    }

    @Test
    void theFirstFrameIsWholeAndLaterOnesSayWhatChanged() throws Exception {
        LiveBoard board = board(EventMode.PRACTICE);
        sail(board, "Dunlin", 0, 10);
        sail(board, "Godwit", 0, 9);
        try (Workbench pages = Workbench.start(List.of(new LiveRoutes(board)), 0)) {
            Frames frames = new Frames(true);
            Frames deaf = new Frames(false);
            WebSocket asleep = open(pages, deaf, "http://127.0.0.1:" + pages.port());
            WebSocket socket = open(pages, frames, "http://127.0.0.1:" + pages.port());
            JsonNode first = next(frames);
            assertEquals("live/1", first.path("schema").asText());
            assertEquals("Dunlin", first.path("state").path("own").asText());
            assertEquals(2, first.path("state").path("boats").size());
            assertEquals(19.4, first.path("state").path("boat.Dunlin.speed_kn").asDouble());
            assertTrue(first.path("state").path("boat.Dunlin.tws_kn").isNull());
            sail(board, "Dunlin", 1, 11);
            JsonNode later = next(frames);
            while (later.path("changed").isEmpty()) {
                later = next(frames);
            }
            assertEquals(
                    21.4, later.path("changed").path("boat.Dunlin.speed_kn").asDouble());
            assertFalse(later.path("changed").has("boat.Godwit.speed_kn"));
            assertTrue(later.path("seq").asLong() > first.path("seq").asLong());
            socket.abort();
            asleep.abort();
        }
    }

    @Test
    void racingShowsNoOtherBoat() {
        LiveBoard board = board(EventMode.RACING);
        sail(board, "Godwit", 0, 9);
        sail(board, "Dunlin", 0, 10);
        assertEquals(List.of("Dunlin"), board.state().get("boats"));
        assertTrue(board.state().keySet().stream().noneMatch(name -> name.contains("Godwit")));
    }

    @Test
    void aPageOfAnotherSiteIsTurnedAway() throws Exception {
        LiveBoard board = board(EventMode.PRACTICE);
        try (Workbench pages = Workbench.start(List.of(new LiveRoutes(board)), 0)) {
            Frames frames = new Frames(true);
            CompletionException refused =
                    assertThrows(CompletionException.class, () -> open(pages, frames, "http://example.org"));
            assertTrue(refused.getCause() instanceof WebSocketHandshakeException, String.valueOf(refused));
        }
    }
}
