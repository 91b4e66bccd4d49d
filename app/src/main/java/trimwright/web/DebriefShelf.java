package trimwright.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import org.jspecify.annotations.Nullable;
import trimwright.boatfile.BoatFile;
import trimwright.debrief.Debrief;
import trimwright.debrief.DebriefJson;
import trimwright.debrief.DebriefOptions;
import trimwright.debrief.DebriefReport;
import trimwright.store.SessionInfo;
import trimwright.text.JsonOut;
import trimwright.wind.WindOptions;

/** Makes debriefs, as {@code trimwright debrief --json} writes them, and keeps the last ones with their series. */
public final class DebriefShelf implements AutoCloseable {
    /** Chosen: one reference and another; a long day of six boats takes some 200 MB. */
    private static final int KEPT = 2;

    private final SessionShelf sessions;
    private final BoatShelf boats;
    private final BackgroundWork<MadeDebrief> work = new BackgroundWork<>(KEPT);

    public DebriefShelf(SessionShelf sessions, BoatShelf boats) {
        this.sessions = sessions;
        this.boats = boats;
    }

    /** What a request wants the session held against. */
    private record Against(@Nullable BoatFile boat) {
        String key(SessionInfo session) {
            return session.hashCode() + " " + session.id() + " " + (boat == null ? "" : boat.hash());
        }
    }

    void answer(Context ctx, SessionInfo session) {
        Against against = against(ctx);
        work.answer(ctx, against.key(session), 1, progress -> make(session, against));
    }

    /** The series of a boat, or null where the debrief that the request speaks of is not made yet. */
    @Nullable
    ChartTrack findSeries(Context ctx, SessionInfo session, String boat) {
        MadeDebrief made = work.find(against(ctx).key(session));
        return made == null ? null : made.findSeries(boat);
    }

    private Against against(Context ctx) {
        String boat = ctx.queryParam("boat");
        return new Against(boat == null ? null : boats.get(boat));
    }

    private MadeDebrief make(SessionInfo session, Against against) {
        BoatFile file = against.boat();
        DebriefOptions options = new DebriefOptions(file == null ? null : file.boat(), null, WindOptions.DEFAULT);
        DebriefReport report = Debrief.of(sessions.load(session), options);
        ObjectNode document =
                file == null ? JsonOut.document(DebriefJson.SCHEMA) : JsonOut.document(DebriefJson.SCHEMA, file.hash());
        document.put("session", session.id());
        DebriefJson.write(report, document);
        try {
            return new MadeDebrief(JsonOut.mapper().writeValueAsBytes(document), report);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a debrief cannot be written as JSON", e);
        }
    }

    @Override
    public void close() {
        work.close();
    }
}
