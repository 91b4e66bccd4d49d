package trimwright.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.store.SessionInfo;
import trimwright.store.SessionJson;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.track.Decimation;

/** Sessions of the library, their channels, and columns for charts and track. */
final class SessionRoutes implements Routes {
    private static final int MOST_BUCKETS = 8000;
    private static final int MOST_POSITIONS = 20_000;
    private static final double LAST_SECOND = 4_000_000_000.0;

    private final SessionShelf shelf;
    private final DebriefShelf debriefs;

    SessionRoutes(SessionShelf shelf, DebriefShelf debriefs) {
        this.shelf = shelf;
        this.debriefs = debriefs;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/sessions", this::sendSessions);
        routes.get("/api/sessions/{session}", this::sendSession);
        routes.get("/api/sessions/{session}/debrief", ctx -> debriefs.answer(ctx, session(ctx)));
        routes.get("/api/sessions/{session}/turns", ctx -> debriefs.answerTurns(ctx, session(ctx)));
        routes.get("/api/sessions/{session}/starts", ctx -> debriefs.answerStarts(ctx, session(ctx)));
        routes.get("/api/sessions/{session}/report", ctx -> debriefs.answerReport(ctx, session(ctx)));
        routes.get("/api/sessions/{session}/quick", ctx -> debriefs.answerQuick(ctx, session(ctx)));
        routes.post("/api/sessions/{session}/quick", ctx -> debriefs.keepLine(ctx, session(ctx)));
        routes.get("/api/sessions/{session}/judge", ctx -> Json.send(ctx, debriefs.judge(session(ctx))));
        routes.get("/api/sessions/{session}/map", this::sendMap);
        routes.get("/api/sessions/{session}/boats/{boat}/channels", this::sendChannels);
        routes.get("/api/sessions/{session}/boats/{boat}/chart", this::sendChart);
        routes.get("/api/sessions/{session}/boats/{boat}/marked", this::sendMarked);
        routes.get("/api/sessions/{session}/boats/{boat}/track", this::sendTrack);
    }

    private void sendSessions(Context ctx) {
        ctx.contentType("application/json").result(JsonOut.text(shelf.list()));
    }

    private void sendSession(Context ctx) {
        Json.send(ctx, SessionJson.document(session(ctx)));
    }

    private void sendMap(Context ctx) {
        SessionInfo session = session(ctx);
        Json.send(ctx, MapDocument.of(shelf.plane(session), shelf.findCourse(session)));
    }

    private void sendChannels(Context ctx) {
        ChartTrack track = track(ctx);
        ObjectNode document = JsonOut.document("channels/1");
        ArrayNode lanes = document.putArray("lanes");
        ChannelFace.LANES.forEach(lanes::add);
        ArrayNode channels = document.putArray("channels");
        track.paths().forEach(path -> describe(channels.addObject(), path));
        ChartTrack found = findSeries(ctx);
        if (found != null) {
            // Its other series are the recorded channels again, on the session's clock.
            found.paths().stream().filter(ChannelFace::isKnown).forEach(path -> describe(channels.addObject(), path));
        }
        Json.send(ctx, document);
    }

    private static void describe(ObjectNode node, String path) {
        ChannelFace face = ChannelFace.of(path);
        node.put("path", path);
        node.put("lane", face.lane());
        node.put("unit", face.unit());
        node.put("turn", face.turn().name().toLowerCase(Locale.ROOT));
    }

    /** For each channel asked for, in that order: a column of times (s since 1970) and one of values. */
    private void sendChart(Context ctx) {
        ChartTrack track = track(ctx);
        ChartTrack found = findSeries(ctx);
        long from = nanos(ctx, "from");
        long to = nanos(ctx, "to");
        int buckets = (int) Query.numberOr(ctx, "buckets", 1, MOST_BUCKETS, 1000);
        List<double[]> columns = new ArrayList<>();
        for (String path : ctx.queryParams("channel")) {
            ChartChannel channel = track.find(path);
            if (channel == null && found != null) {
                channel = found.find(path);
            }
            if (channel == null) {
                throw Refusal.notFound(Texts.of("web.refuse.channel", path));
            }
            Decimation thinned = channel.between(from, to, buckets);
            double[] times = new double[thinned.size()];
            double[] values = new double[thinned.size()];
            for (int i = 0; i < times.length; i++) {
                times[i] = thinned.timeNanos(i) / 1e9;
                values[i] = thinned.value(i);
            }
            columns.add(times);
            columns.add(values);
        }
        Columns.send(ctx, columns);
    }

    /** For each channel asked for, in that order: times (s since 1970) of samples left out, and why. */
    private void sendMarked(Context ctx) {
        ChartTrack track = track(ctx);
        long from = nanos(ctx, "from");
        long to = nanos(ctx, "to");
        int buckets = (int) Query.numberOr(ctx, "buckets", 1, MOST_BUCKETS, 1000);
        List<double[]> columns = new ArrayList<>();
        for (String path : ctx.queryParams("channel")) {
            ChartMarks marks = track.findMarks(path);
            // What the debrief computed bears no marks.
            columns.addAll(marks == null ? ChartMarks.NONE : marks.between(from, to, buckets));
        }
        Columns.send(ctx, columns);
    }

    /** Time (s since 1970), north and east of the map's origin (m). */
    private void sendTrack(Context ctx) {
        int most = (int) Query.numberOr(ctx, "positions", 2, MOST_POSITIONS, 4000);
        double[][] columns =
                track(ctx).line().between(shelf.plane(session(ctx)), nanos(ctx, "from"), nanos(ctx, "to"), most);
        Columns.send(ctx, List.of(columns));
    }

    private ChartTrack track(Context ctx) {
        return shelf.track(session(ctx), ctx.pathParam("boat"));
    }

    /** What the debrief added, or null until it is made. */
    private @Nullable ChartTrack findSeries(Context ctx) {
        return debriefs.findSeries(ctx, session(ctx), ctx.pathParam("boat"));
    }

    private SessionInfo session(Context ctx) {
        return shelf.get(ctx.pathParam("session"));
    }

    @Override
    public void close() {
        debriefs.close();
    }

    private static long nanos(Context ctx, String name) {
        return (long) (Query.number(ctx, name, 0, LAST_SECOND) * 1e9);
    }
}
