package trimwright.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.crew.TurnKind;
import trimwright.drills.DrillBoats;
import trimwright.drills.StartPlanDocument;
import trimwright.drills.StartPlanRun;
import trimwright.drills.TurnPlanDocument;
import trimwright.drills.TurnPlanRun;
import trimwright.drills.TurnWords;
import trimwright.start.StartSetup;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnSetup;
import trimwright.units.Units;

/** Plans of turns and starts, as the commands make them with what these take where nothing is said. */
final class PlanRoutes implements Routes {
    /** Chosen: the turns and starts of some winds of a day. */
    private static final int KEPT = 24;

    private final BoatShelf boats;
    private final TargetShelf targets;
    private final BackgroundWork<MadeDocument> work = new BackgroundWork<>(KEPT);

    PlanRoutes(BoatShelf boats, TargetShelf targets) {
        this.boats = boats;
        this.targets = targets;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/turn-plan", this::turn);
        routes.get("/api/start-plan", this::start);
    }

    private interface Job {
        ObjectNode run(TargetBook book, Progress progress) throws InterruptedException;
    }

    private void turn(Context ctx) {
        BoatFile file = boats.get(Query.text(ctx, "boat"));
        WingSpec wing = BoatShelf.getWing(file, Query.text(ctx, "wing"));
        TurnKind kind = TurnWords.kind(Query.text(ctx, "kind"));
        String word = ctx.queryParam("begin");
        TurnBegin begin = word == null ? TurnBegin.FOILS : TurnWords.begin(word);
        double wind = wind(ctx);
        double gusty = Query.turbulence(ctx);
        answer(ctx, file, wing, TurnPlanRun.steps(TurnPlanRun.TRIES), (book, progress) -> {
            TurnSetup setup = DrillBoats.turn(kind, begin, file, wing, book, wind, gusty);
            return TurnPlanDocument.of(
                    file,
                    TurnPlanRun.of(
                            setup, TurnPlanRun.chanceOf(file), TurnPlanRun.TRIES, TurnPlanRun.CHECKED, progress));
        });
    }

    private void start(Context ctx) {
        BoatFile file = boats.get(Query.text(ctx, "boat"));
        WingSpec wing = BoatShelf.getWing(file, Query.text(ctx, "wing"));
        double wind = wind(ctx);
        double gusty = Query.turbulence(ctx);
        double angle = Units.fromDegrees(
                Query.number(ctx, "twa_deg", StartPlanRun.LEAST_ANGLE_DEG, StartPlanRun.MOST_ANGLE_DEG));
        int sailing = StartPlanRun.BOATS;
        answer(ctx, file, wing, StartPlanRun.steps(sailing), (book, progress) -> {
            StartSetup setup = DrillBoats.start(file, wing, book, wind, gusty, angle);
            return StartPlanDocument.of(file, StartPlanRun.of(setup, sailing, progress), sailing);
        });
    }

    private static double wind(Context ctx) {
        return Units.fromKnots(Query.number(ctx, "tws_kn", DrillBoats.LEAST_WIND, DrillBoats.MOST_WIND));
    }

    private void answer(Context ctx, BoatFile file, WingSpec wing, long steps, Job job) {
        TargetBook book =
                targets.findBook(ctx, file, wing, targets.sections(file, wing).source());
        if (book == null) {
            return;
        }
        String key = ctx.path() + "?" + ctx.queryString() + " " + file.hash();
        work.answer(ctx, key, steps, progress -> made(job, book, progress));
    }

    private static MadeDocument made(Job job, TargetBook book, Progress progress) {
        try {
            return new MadeDocument(Json.bytes(job.run(book, progress)));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the workbench stops", e);
        }
    }

    @Override
    public void close() {
        work.close();
    }
}
