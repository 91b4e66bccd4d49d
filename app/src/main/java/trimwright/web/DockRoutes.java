package trimwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.dock.DockGiven;
import trimwright.dockside.DockDocument;
import trimwright.dockside.DockRequest;
import trimwright.store.SessionInfo;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.track.BoatTrack;
import trimwright.units.Units;

/** The dock check: the crew's list, the check of a session, and keeping it. */
final class DockRoutes implements Routes {
    private static final double STEEPEST_DEG = 20;
    private static final double STRONGEST = 200_000;
    private static final double LONGEST = 40;

    private final SessionShelf sessions;
    private final BoatShelf boats;

    DockRoutes(SessionShelf sessions, BoatShelf boats) {
        this.sessions = sessions;
        this.boats = boats;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/dock-list", ctx -> Json.send(ctx, DockDocument.list()));
        routes.get("/api/sessions/{session}/dock", ctx -> Json.send(ctx, DockDocument.of(request(ctx))));
        routes.post("/api/sessions/{session}/dock", this::keep);
    }

    /** The same check as the page shows, kept with the session. */
    private void keep(Context ctx) {
        DockRequest request = request(ctx);
        String text = JsonOut.text(DockDocument.of(request));
        boolean kept = sessions.dockChecks(session(ctx)).keep(request.track().boat(), text);
        Json.send(ctx, JsonOut.document("dock-kept/1").put("kept", kept));
    }

    private SessionInfo session(Context ctx) {
        return sessions.get(ctx.pathParam("session"));
    }

    private DockRequest request(Context ctx) {
        BoatFile file = boats.get(Query.text(ctx, "boat"));
        WingSpec wing = BoatShelf.getWing(file, Query.text(ctx, "wing"));
        BoatTrack track = DockRequest.choose(sessions.load(session(ctx)), Query.text(ctx, "own"));
        DockGiven given = new DockGiven(
                Units.fromDegrees(measured(ctx, "heel_deg", -STEEPEST_DEG, STEEPEST_DEG)),
                Units.fromDegrees(measured(ctx, "pitch_deg", -STEEPEST_DEG, STEEPEST_DEG)),
                measured(ctx, "pull_n", 1, STRONGEST),
                measured(ctx, "antenna_aft_m", 0, LONGEST),
                measured(ctx, "antenna_starboard_m", -LONGEST, LONGEST));
        return new DockRequest(file, wing, track, start(ctx, track), given);
    }

    private static double measured(Context ctx, String name, double low, double high) {
        return Query.numberOr(ctx, name, low, high, Double.NaN);
    }

    private static long start(Context ctx, BoatTrack track) {
        @Nullable String given = ctx.queryParam("start_utc");
        if (given == null || given.isBlank()) {
            return track.startNanos();
        }
        try {
            Instant at = Instant.parse(given);
            return at.getEpochSecond() * 1_000_000_000L + at.getNano();
        } catch (DateTimeParseException e) {
            throw new UserInputException(Texts.of("dock.bad_start", given), e);
        }
    }
}
