package trimwright.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.websocket.WsCloseContext;
import io.javalin.websocket.WsConnectContext;
import io.javalin.websocket.WsContext;
import io.javalin.websocket.WsMessageContext;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.drills.CuedDrill;
import trimwright.drills.DrillBoats;
import trimwright.drills.DrillDocument;
import trimwright.drills.DrillSea;
import trimwright.drills.Pilot;
import trimwright.plans.KeptPlans;
import trimwright.practice.Drill;
import trimwright.practice.DrillRun;
import trimwright.practice.DrillSetup;
import trimwright.practice.WingPart;
import trimwright.prepare.SectionSource;
import trimwright.target.TargetBook;
import trimwright.text.JsonOut;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.units.Units;
import trimwright.weather.WaveSpec;

/** Drills with the wing in the hands of a person at a page: what there is to sail, a yardstick, and the sailing itself. */
final class PracticeRoutes implements Routes {
    /** Chosen: one person, maybe with a second window. */
    private static final int MOST_RUNS = 4;

    private static final int POLICY_VIOLATION = 1008;
    /** The boat in motion has sections in closed form, so her targets must be of the same kind. */
    private static final SectionSource SAILED = SectionSource.CLOSED_FORM;

    private final BoatShelf boats;
    private final TargetShelf targets;
    private final KeptPlans plans;
    private final Map<String, PracticeRun> runs = new ConcurrentHashMap<>();
    private final ScheduledExecutorService clock = Executors.newScheduledThreadPool(1, task -> {
        Thread thread = new Thread(task, "practice");
        thread.setDaemon(true);
        return thread;
    });

    PracticeRoutes(BoatShelf boats, TargetShelf targets, KeptPlans plans) {
        this.plans = plans;
        this.boats = boats;
        this.targets = targets;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/practice", this::sendOffer);
        routes.get("/api/practice/yardstick", this::sendYardstick);
        routes.ws("/ws/practice", ws -> {
            ws.onConnect(this::begin);
            ws.onMessage(this::hear);
            ws.onClose(this::end);
            ws.onError(context -> drop(context.sessionId()));
        });
    }

    /** What can be sailed, once the targets are at hand. */
    private void sendOffer(Context ctx) {
        BoatFile file = boats.get(Query.text(ctx, "boat"));
        WingSpec wing = BoatShelf.getWing(file, Query.text(ctx, "wing"));
        if (targets.findBook(ctx, file, wing, SAILED) == null) {
            return;
        }
        ObjectNode document = JsonOut.document("practice-offer/1", file.hash());
        document.put("tws_least_kn", DrillBoats.LEAST_WIND).put("tws_most_kn", DrillBoats.MOST_WIND);
        document.put("waves_most_m", DrillSea.HIGHEST);
        ArrayNode drills = document.putArray("drills");
        for (Drill drill : Drill.values()) {
            ObjectNode node = drills.addObject().put("drill", DrillBoats.word(drill));
            node.put("length_s", drill.seconds());
            ArrayNode words = node.putArray("words_s");
            drill.words().forEach(word -> words.add(word));
        }
        ArrayNode parts = document.putArray("parts");
        for (WingPart part : WingPart.values()) {
            parts.add(part.name().toLowerCase(Locale.ROOT));
        }
        ObjectNode shape = document.putObject("shape");
        shape.put("wing_span_m", wing.span());
        shape.put("foot_height_m", wing.footHeight());
        shape.put("hull_spacing_m", file.boat().hulls().spacing());
        shape.put("hull_length_m", file.boat().hulls().lengthOverall());
        shape.put("board_length_m", file.boat().mainFoil().shaftLength());
        shape.put("tip_span_m", file.boat().mainFoil().tipSpan());
        shape.put("camber_max_deg", Units.toDegrees(wing.trim().camberMax()));
        shape.put("twist_max_deg", Units.toDegrees(wing.trim().twistMax()));
        shape.put("sheet_max_deg", Units.toDegrees(wing.trim().sheetMax()));
        shape.put("sheet_load_max_n", wing.sheet().loadMax());
        shape.put("flap_chord_ratio", wing.flapChordRatio());
        shape.put("turning_axis_ratio", wing.turningAxisRatio());
        ArrayNode chords = shape.putArray("chords_m");
        for (double share : new double[] {0.03, 0.5, 0.97}) {
            chords.add(trimwright.wing.Wing.stationAt(wing, share * wing.span()).chord());
        }
        Json.send(ctx, document);
    }

    /** The same drill in the hand of the computed trimmer, as {@code trimwright practice --json} writes it. */
    private void sendYardstick(Context ctx) {
        BoatFile file = boats.get(Query.text(ctx, "boat"));
        WingSpec wing = BoatShelf.getWing(file, Query.text(ctx, "wing"));
        TargetBook book = targets.findBook(ctx, file, wing, SAILED);
        if (book == null) {
            return;
        }
        DrillSetup setup = DrillBoats.setup(
                        DrillBoats.drill(Query.text(ctx, "drill")),
                        file,
                        wing,
                        book,
                        Units.fromKnots(Query.number(ctx, "tws_kn", DrillBoats.LEAST_WIND, DrillBoats.MOST_WIND)),
                        (long) Query.number(ctx, "seed", 0, Integer.MAX_VALUE))
                .on(sea(ctx.queryParam("waves")));
        Pilot pilot = Pilot.REFERENCE;
        Json.send(ctx, DrillDocument.of(file, setup, pilot.word(), DrillRun.sail(setup, pilot.hand(setup))));
    }

    private void begin(WsConnectContext context) {
        if (runs.size() >= MOST_RUNS) {
            context.closeSession(POLICY_VIOLATION, Texts.of("web.practice.too_many", MOST_RUNS));
            return;
        }
        try {
            BoatFile file = boats.get(text(context, "boat"));
            WingSpec wing = BoatShelf.getWing(file, text(context, "wing"));
            double wind = number(context, "tws_kn", DrillBoats.LEAST_WIND, DrillBoats.MOST_WIND);
            DrillSetup setup = DrillBoats.setup(
                            DrillBoats.drill(text(context, "drill")),
                            file,
                            wing,
                            targets.get(file, wing, SAILED, Progress.NONE),
                            Units.fromKnots(wind),
                            (long) number(context, "seed", 0, Integer.MAX_VALUE))
                    .on(sea(context.queryParam("waves")));
            PracticeRun run = new PracticeRun(
                    file,
                    setup,
                    mine(context),
                    CuedDrill.find(setup, plans.list(file.boat().name(), wing.id())),
                    context,
                    clock);
            runs.put(context.sessionId(), run);
            run.start();
        } catch (UserInputException | Refusal e) {
            context.closeSession(POLICY_VIOLATION, reason(e));
        }
    }

    private void hear(WsMessageContext context) {
        PracticeRun run = runs.get(context.sessionId());
        if (run != null && !run.hear(context.message())) {
            context.closeSession(POLICY_VIOLATION, Texts.of("web.practice.not_understood"));
        }
    }

    private void end(WsCloseContext context) {
        drop(context.sessionId());
    }

    private void drop(String id) {
        PracticeRun run = runs.remove(id);
        if (run != null) {
            run.stop();
        }
    }

    private static Set<WingPart> mine(WsContext context) {
        Set<WingPart> mine = EnumSet.noneOf(WingPart.class);
        String given = context.queryParam("mine");
        for (String word : given == null ? new String[0] : given.split(",", -1)) {
            for (WingPart part : WingPart.values()) {
                if (part.name().equalsIgnoreCase(word)) {
                    mine.add(part);
                }
            }
        }
        return mine;
    }

    private static String text(WsContext context, String name) {
        String given = context.queryParam(name);
        if (given == null || given.isBlank()) {
            throw new UserInputException(Texts.of("web.query.missing", name));
        }
        return given;
    }

    /** Flat water where nothing is said. */
    private static @Nullable WaveSpec sea(@Nullable String waves) {
        return waves == null ? null : DrillSea.of(waves);
    }

    private static double number(WsContext context, String name, double least, double most) {
        return Query.number(text(context, name), name, least, most);
    }

    /** A close reason may have 123 bytes (RFC 6455, 5.5). */
    private static String reason(Exception e) {
        @Nullable String sentence = e instanceof Refusal refusal ? refusal.sentence() : e.getMessage();
        String whole = sentence == null ? "" : sentence;
        return whole.length() > 120 ? whole.substring(0, 120) : whole;
    }

    @Override
    public void close() {
        clock.shutdownNow();
    }
}
