package trimwright.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.websocket.WsContext;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import trimwright.recording.LiveBoard;
import trimwright.text.JsonOut;

/**
 * The live pages' data: {@code /ws/live} ({@code live/1}) first sends the whole state, then what changed, twenty times a
 * second at most. A client that reads slowly is left out until it has read, and then gets the newest only.
 */
public final class LiveRoutes implements Routes {
    /** Chosen: the protocol's twenty times a second. */
    private static final long PERIOD_MILLIS = 50;

    /** Chosen: what the mark key marks. */
    private static final double MARK_SECONDS = 20;

    private final LiveBoard board;
    private final Set<LiveClient> clients = ConcurrentHashMap.newKeySet();
    private final Map<String, LiveClient> bySession = new ConcurrentHashMap<>();
    private final ScheduledExecutorService sender = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "live pages");
        thread.setDaemon(true);
        return thread;
    });

    public LiveRoutes(LiveBoard board) {
        this.board = board;
        var unused = sender.scheduleAtFixedRate(this::send, PERIOD_MILLIS, PERIOD_MILLIS, TimeUnit.MILLISECONDS);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/live", this::whole);
        routes.post("/api/live/mark", this::mark);
        routes.ws("/ws/live", ws -> {
            ws.onConnect(this::connect);
            ws.onClose(ctx -> leave(ctx.sessionId()));
            ws.onError(ctx -> leave(ctx.sessionId()));
        });
    }

    private void whole(Context ctx) {
        Json.send(ctx, LiveClient.whole(board.state(), board.timeUtc(), 0));
    }

    private void mark(Context ctx) throws InterruptedException {
        ObjectNode answer = JsonOut.document("live-mark/1").put("kept", board.mark(MARK_SECONDS));
        Json.send(ctx, answer.put("length_s", MARK_SECONDS));
    }

    private void connect(WsContext ctx) {
        LiveClient client = new LiveClient(ctx.session);
        bySession.put(ctx.sessionId(), client);
        clients.add(client);
    }

    private void leave(String session) {
        LiveClient client = bySession.remove(session);
        if (client != null) {
            clients.remove(client);
        }
    }

    private void send() {
        Map<String, Object> state = board.state();
        String time = board.timeUtc();
        for (LiveClient client : clients) {
            client.offer(state, time);
        }
    }

    @Override
    public void close() {
        sender.shutdownNow();
    }
}
