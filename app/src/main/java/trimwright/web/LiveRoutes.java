package trimwright.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.websocket.WsContext;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import trimwright.recording.Journals;
import trimwright.recording.LiveBoard;
import trimwright.store.SessionInfo;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/**
 * The live pages' data: {@code /ws/live} ({@code live/1}) first sends the whole state, then what changed, twenty times a
 * second at most. A client that reads slowly is left out until it has read, and then gets the newest only.
 */
public final class LiveRoutes implements Routes {
    /** Chosen: the protocol's twenty times a second. */
    private static final long PERIOD_MILLIS = 50;

    /** Chosen: what the mark key marks. */
    private static final double MARK_SECONDS = 20;

    /** Makes a session of what was recorded so far. */
    public interface RaceOver {
        /** Null where nothing had come. */
        Journals.@Nullable Closed cut() throws InterruptedException;
    }

    /**
     * What is recorded is held against the targets of that boat and wing.
     *
     * @param file the boat file, null for a boat of the program
     * @param boat its name or path as given
     * @param wing its id
     */
    public record Against(@Nullable Path file, String boat, String wing) {
        String id() {
            return file == null ? boat : BoatShelf.idOf(file);
        }
    }

    private final LiveBoard board;
    private final @Nullable RaceOver raceOver;
    private final @Nullable Against against;
    private final Set<LiveClient> clients = ConcurrentHashMap.newKeySet();
    private final Map<String, LiveClient> bySession = new ConcurrentHashMap<>();
    private final ScheduledExecutorService sender = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "live pages");
        thread.setDaemon(true);
        return thread;
    });

    /** Of a replay, in which nothing is recorded. */
    public LiveRoutes(LiveBoard board) {
        this(board, null, null);
    }

    /**
     * Of a recording.
     *
     * @param raceOver what to do when a race is over; null where nothing is recorded
     * @param against whose targets; null where no boat is described
     */
    public LiveRoutes(LiveBoard board, @Nullable RaceOver raceOver, @Nullable Against against) {
        this.board = board;
        this.against = against;
        this.raceOver = raceOver;
        var unused = sender.scheduleAtFixedRate(this::send, PERIOD_MILLIS, PERIOD_MILLIS, TimeUnit.MILLISECONDS);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/live", this::whole);
        routes.post("/api/live/mark", this::mark);
        routes.post("/api/live/race-over", this::cut);
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

    private void cut(Context ctx) throws InterruptedException {
        if (raceOver == null) {
            throw new UserInputException(Texts.of("live.race_over.replay"));
        }
        Journals.Closed closed = raceOver.cut();
        if (closed == null) {
            throw new UserInputException(Texts.of("live.race_over.nothing"));
        }
        SessionInfo session = closed.session();
        if (session == null) {
            throw new UserInputException(Texts.of("live.not_closed", closed.journal(), String.valueOf(closed.fault())));
        }
        ObjectNode answer = JsonOut.document("live-race-over/1").put("session", session.id());
        answer.put("boat", against == null ? null : against.id()).put("wing", against == null ? null : against.wing());
        Json.send(ctx, answer);
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
