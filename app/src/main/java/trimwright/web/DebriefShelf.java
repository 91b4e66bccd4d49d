package trimwright.web;

import io.javalin.http.Context;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.debrief.Debrief;
import trimwright.debrief.DebriefJson;
import trimwright.debrief.DebriefOptions;
import trimwright.debrief.DebriefReport;
import trimwright.store.SessionInfo;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.wind.WindOptions;

/** Makes debriefs, as {@code trimwright debrief --json} writes them, and keeps the last ones with their series. */
final class DebriefShelf implements AutoCloseable {
    /** Chosen: one reference and another; a long day of six boats takes some 200 MB. */
    private static final int KEPT = 2;

    private final SessionShelf sessions;
    private final BoatShelf boats;
    private final TargetShelf targets;
    private final BackgroundWork<MadeDebrief> work = new BackgroundWork<>(KEPT);

    DebriefShelf(SessionShelf sessions, BoatShelf boats, TargetShelf targets) {
        this.sessions = sessions;
        this.boats = boats;
        this.targets = targets;
    }

    /**
     * What a request wants the session held against.
     *
     * @param boat the boat file, null where the logs' boat is not described
     * @param wing whose targets, null where each boat is held against its own best
     */
    private record Against(
            @Nullable BoatFile boat, @Nullable WingSpec wing) {
        String key(SessionInfo session) {
            return session.hashCode() + " " + session.id() + " " + (boat == null ? "" : boat.hash()) + " "
                    + (wing == null ? "" : wing.id());
        }
    }

    void answer(Context ctx, SessionInfo session) {
        Against against = against(ctx);
        work.answer(ctx, against.key(session), steps(against), progress -> make(session, against, progress));
    }

    /** The series of a boat, or null where the debrief that the request speaks of is not made yet. */
    @Nullable
    ChartTrack findSeries(Context ctx, SessionInfo session, String boat) {
        MadeDebrief made = work.find(against(ctx).key(session));
        return made == null ? null : made.findSeries(boat);
    }

    private Against against(Context ctx) {
        String boat = ctx.queryParam("boat");
        if (boat == null) {
            return new Against(null, null);
        }
        BoatFile file = boats.get(boat);
        String wing = ctx.queryParam("wing");
        return new Against(file, wing == null ? file.boat().wings().get(0) : BoatShelf.getWing(file, wing));
    }

    private long steps(Against against) {
        BoatFile boat = against.boat();
        WingSpec wing = against.wing();
        return boat == null || wing == null ? 1 : targets.steps(boat, wing);
    }

    private MadeDebrief make(SessionInfo session, Against against, Progress progress) {
        BoatFile file = against.boat();
        WingSpec wing = against.wing();
        TargetBook book = file == null || wing == null ? null : targets.get(file, wing, progress);
        DebriefOptions options = new DebriefOptions(
                file == null ? null : file.boat(), book, sessions.findCourse(session), WindOptions.DEFAULT);
        DebriefReport report = Debrief.of(sessions.load(session), options);
        return new MadeDebrief(Json.bytes(DebriefJson.document(session.id(), file, wing, report)), report, book);
    }

    @Override
    public void close() {
        work.close();
    }
}
