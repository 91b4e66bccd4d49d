package trimwright.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.report.MomentPage;
import trimwright.store.Moments;
import trimwright.store.SessionInfo;

/** What people marked in a session: listed, kept, dropped, each as a page of its own. */
final class MomentRoutes implements Routes {
    private final SessionShelf shelf;
    private final BoatShelf boats;

    MomentRoutes(SessionShelf shelf, BoatShelf boats) {
        this.shelf = shelf;
        this.boats = boats;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        String all = "/api/sessions/{session}/moments";
        routes.get(all, ctx -> send(ctx, session(ctx)));
        routes.post(all, this::keep);
        routes.delete(all + "/{moment}", this::drop);
        routes.get(all + "/{moment}/page", this::sendPage);
    }

    private void send(Context ctx, SessionInfo session) {
        Json.send(ctx, Moments.document(session, shelf.moments(session).list()));
    }

    private void keep(Context ctx) {
        SessionInfo session = session(ctx);
        JsonNode body = Json.body(ctx);
        List<String> tags = new ArrayList<>();
        body.path("tags").forEach(tag -> tags.add(tag.asText()));
        @Nullable
        String boat = body.path("boat").isTextual() ? body.path("boat").asText() : null;
        shelf.moments(session)
                .keep(
                        body.path("start_s").asDouble(Double.NaN),
                        body.path("duration_s").asDouble(Double.NaN),
                        boat,
                        body.path("note").asText(),
                        tags);
        send(ctx, session);
    }

    private void drop(Context ctx) {
        SessionInfo session = session(ctx);
        shelf.moments(session).drop(ctx.pathParam("moment"));
        send(ctx, session);
    }

    /** With the boat file that the session is held against: without one the wind is as if the sensor stood still and low. */
    private void sendPage(Context ctx) {
        SessionInfo session = session(ctx);
        String asked = ctx.queryParam("boat");
        Boat boat = asked == null ? null : boats.get(asked).boat();
        MomentPage page = MomentPage.of(
                shelf.moments(session).get(ctx.pathParam("moment")),
                session,
                shelf.load(session),
                shelf.findCourse(session),
                boat);
        StandAlone.send(ctx, session.id() + "-" + ctx.pathParam("moment"), page.html());
    }

    private SessionInfo session(Context ctx) {
        return shelf.get(ctx.pathParam("session"));
    }
}
