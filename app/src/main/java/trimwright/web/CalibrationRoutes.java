package trimwright.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.sensors.CalibrationDocument;
import trimwright.sensors.CalibrationRequest;
import trimwright.store.SessionInfo;
import trimwright.text.JsonOut;

/** The calibration of a session: solved, accepted, taken back. */
final class CalibrationRoutes implements Routes {
    private final SessionShelf sessions;
    private final BoatShelf boats;

    CalibrationRoutes(SessionShelf sessions, BoatShelf boats) {
        this.sessions = sessions;
        this.boats = boats;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        String place = "/api/sessions/{session}/calibration";
        routes.get(place, ctx -> Json.send(ctx, solved(ctx).put("in_force", isInForce(ctx))));
        routes.post(place, this::accept);
        routes.delete(place, this::undo);
    }

    private SessionInfo session(Context ctx) {
        return sessions.get(ctx.pathParam("session"));
    }

    private boolean isInForce(Context ctx) {
        return sessions.calibrations(session(ctx)).findInForce() != null;
    }

    private ObjectNode solved(Context ctx) {
        @Nullable String asked = ctx.queryParam("boat");
        BoatFile file = asked == null ? null : boats.get(asked);
        WingSpec wing = file == null ? null : BoatShelf.getWing(file, Query.text(ctx, "wing"));
        SessionInfo session = session(ctx);
        CalibrationRequest request =
                new CalibrationRequest(session, file, wing, sessions.load(session), sessions.dockChecks(session));
        return CalibrationDocument.of(request, request.solve());
    }

    /** The same as the page shows, solved again from the same channels. */
    private void accept(Context ctx) {
        sessions.calibrations(session(ctx)).accept(JsonOut.text(solved(ctx)));
        said(ctx);
    }

    private void undo(Context ctx) {
        sessions.calibrations(session(ctx)).undo();
        said(ctx);
    }

    private void said(Context ctx) {
        Json.send(ctx, JsonOut.document("calibration-kept/1").put("in_force", isInForce(ctx)));
    }
}
