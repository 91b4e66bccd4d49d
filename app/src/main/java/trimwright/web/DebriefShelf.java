package trimwright.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.debrief.CrewLine;
import trimwright.debrief.CrewLines;
import trimwright.debrief.Debrief;
import trimwright.debrief.DebriefOptions;
import trimwright.debrief.DebriefReport;
import trimwright.debrief.DebriefRequest;
import trimwright.debrief.KeptDebriefs;
import trimwright.debrief.QuickDocument;
import trimwright.learned.LearnedTargets;
import trimwright.plans.KeptPlans;
import trimwright.prepare.SectionSource;
import trimwright.prepare.Sections;
import trimwright.report.DayReport;
import trimwright.season.KeptLearned;
import trimwright.segment.TurnKind;
import trimwright.sensors.CalibrationDocument;
import trimwright.store.KeptCalibrations;
import trimwright.store.SessionInfo;
import trimwright.target.TargetBook;
import trimwright.text.JsonOut;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.wind.WindOptions;

/** Makes debriefs, as {@code trimwright debrief --json} writes them, and keeps the last ones with their series. */
final class DebriefShelf implements AutoCloseable {
    /** Chosen: one reference and another; a long day of six boats takes some 200 MB. */
    private static final int KEPT = 2;

    /** What fits on a phone and in a head (characters): chosen. */
    private static final int LONGEST_LINE = 80;

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
     * @param sections of that wing, null without one
     * @param learned what the library has learnt of that wing, null where the model's targets are wanted
     */
    private record Against(
            @Nullable BoatFile boat,
            @Nullable WingSpec wing,
            @Nullable Sections sections,
            @Nullable LearnedTargets learned) {
        String key(SessionInfo session, KeptCalibrations calibrations) {
            return Objects.hashCode(calibrations.findInForce()) + " " + session.hashCode() + " " + session.id() + " "
                    + (boat == null ? "" : boat.setup()) + " " + (wing == null ? "" : wing.id()) + " " + source() + " "
                    + (learned == null ? "" : learned.hashCode());
        }

        SectionSource source() {
            return sections == null ? SectionSource.CLOSED_FORM : sections.source();
        }
    }

    void answer(Context ctx, SessionInfo session) {
        Against against = against(ctx);
        work.answer(ctx, key(against, session), steps(against), progress -> make(session, against, progress));
    }

    /** Six lines of the boat that the request calls its own; 202 while the debrief is being made. */
    void answerQuick(Context ctx, SessionInfo session) {
        MadeDebrief made = made(ctx, session);
        if (made != null) {
            ctx.status(200);
            Json.send(ctx, new QuickDocument(tree(made), Query.text(ctx, "own"), lines()).json());
        }
    }

    /** The report of the day as a page of its own; 202 while the debrief is being made. */
    void answerReport(Context ctx, SessionInfo session) {
        MadeDebrief made = made(ctx, session);
        if (made != null) {
            DayReport report = DayReport.of(
                    tree(made), session, sessions.load(session), sessions.findCourse(session), made.book());
            StandAlone.send(ctx, session.id(), report.html());
        }
    }

    /** All turns of the kind that the request names, of all boats; 202 while the debrief is being made. */
    void answerTurns(Context ctx, SessionInfo session) {
        TurnKind kind = kind(Query.text(ctx, "kind"));
        MadeDebrief made = made(ctx, session);
        if (made != null) {
            ctx.status(200);
            ctx.contentType("application/json").result(made.turns(kind));
        }
    }

    /** The last minute and a half before the start, of all boats; 202 while the debrief is being made. */
    void answerStarts(Context ctx, SessionInfo session) {
        MadeDebrief made = made(ctx, session);
        if (made != null) {
            ctx.status(200);
            ctx.contentType("application/json").result(made.starts());
        }
    }

    private static TurnKind kind(String given) {
        for (TurnKind kind : TurnKind.values()) {
            if (kind.name().toLowerCase(Locale.ROOT).equals(given)) {
                return kind;
            }
        }
        throw new UserInputException(Texts.of("web.refuse.turn_kind", given));
    }

    /** Keeps what the boat's crew says that it will change. */
    void keepLine(Context ctx, SessionInfo session) {
        JsonNode said = Json.body(ctx);
        MadeDebrief made = made(ctx, session);
        if (made != null) {
            String text = said.path("text").asText().strip();
            if (text.isEmpty() || text.length() > LONGEST_LINE) {
                throw new UserInputException(Texts.of("quick.too_long", LONGEST_LINE));
            }
            String own = Query.text(ctx, "own");
            lines().keep(CrewLine.of(tree(made), own, said.path("cause").asText(), text));
            answerQuick(ctx, session);
        }
    }

    /** What a calibration accepted or taken back changes, too. */
    private String key(Against against, SessionInfo session) {
        return against.key(session, sessions.calibrations(session));
    }

    private @Nullable MadeDebrief made(Context ctx, SessionInfo session) {
        String key = key(against(ctx), session);
        MadeDebrief made = work.find(key);
        if (made == null) {
            answer(ctx, session);
            made = work.find(key);
        }
        return made;
    }

    private static JsonNode tree(MadeDebrief made) {
        return JsonOut.read(new String(made.document(), StandardCharsets.UTF_8));
    }

    private CrewLines lines() {
        return new CrewLines(sessions.folder());
    }

    /** The series of a boat, or null where the debrief that the request speaks of is not made yet. */
    @Nullable
    ChartTrack findSeries(Context ctx, SessionInfo session, String boat) {
        MadeDebrief made = work.find(key(against(ctx), session));
        return made == null ? null : made.findSeries(boat);
    }

    private Against against(Context ctx) {
        String boat = ctx.queryParam("boat");
        if (boat == null) {
            return new Against(null, null, null, null);
        }
        BoatFile file = boats.get(boat);
        String wing = ctx.queryParam("wing");
        WingSpec spec = wing == null ? file.boat().wings().get(0) : BoatShelf.getWing(file, wing);
        LearnedTargets learned = ctx.queryParam("learned") == null
                ? null
                : new KeptLearned(sessions.folder()).get(file, spec).targets();
        return new Against(file, spec, targets.sections(file, spec), learned);
    }

    private long steps(Against against) {
        BoatFile boat = against.boat();
        WingSpec wing = against.wing();
        return boat == null || wing == null ? 1 : targets.steps(boat, wing);
    }

    private MadeDebrief make(SessionInfo session, Against against, Progress progress) {
        BoatFile file = against.boat();
        WingSpec wing = against.wing();
        TargetBook book = file == null || wing == null ? null : targets.get(file, wing, against.source(), progress);
        LearnedTargets learned = against.learned();
        TargetBook taught =
                book == null || file == null || learned == null ? null : KeptLearned.book(book, learned, file);
        KeptPlans shelf = new KeptPlans(sessions.folder());
        DebriefRequest request = new DebriefRequest(
                session,
                file,
                wing,
                null,
                WindOptions.DEFAULT,
                against.source(),
                file == null || wing == null
                        ? shelf.list()
                        : shelf.list(file.boat().name(), wing.id()),
                sessions.calibrations(session).findInForce(),
                against.learned());
        KeptDebriefs kept = sessions.debriefs(session);
        KeptDebriefs.Printed printed = kept.find(request);
        // What was judged before need only be cut up again, for its series.
        DebriefOptions options = new DebriefOptions(
                file == null ? null : file.boat(),
                printed == null ? book : null,
                sessions.findCourse(session),
                request.wind(),
                against.sections(),
                CalibrationDocument.corrections(request.calibration()),
                printed == null ? taught : null);
        DebriefReport report = Debrief.of(sessions.load(session), options).with(request.plans());
        if (printed == null) {
            printed = kept.print(request, report);
        }
        return new MadeDebrief(printed.json().getBytes(StandardCharsets.UTF_8), report, taught == null ? book : taught);
    }

    /** By which boat of the shelf and which wing the session was judged last, here or by a command; null by none. */
    ObjectNode judge(SessionInfo session) {
        ObjectNode document = JsonOut.document("judge/1");
        for (KeptDebriefs.Judge judge : sessions.debriefs(session).judges()) {
            for (BoatShelf.Entry entry : boats.list()) {
                BoatFile file = entry.file();
                if (file != null && file.text().equals(judge.boat())) {
                    return document.put("boat", entry.id()).put("wing", judge.wing());
                }
            }
        }
        return document.putNull("boat").putNull("wing");
    }

    @Override
    public void close() {
        work.close();
    }
}
