package trimwright.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.TargetTrim;
import trimwright.prepare.WingCut;
import trimwright.prepare.WingDocument;
import trimwright.prepare.WingInput;
import trimwright.prepare.WingState;
import trimwright.target.TargetBook;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetLookup;
import trimwright.target.TargetPoint;
import trimwright.target.TrimSetting;
import trimwright.text.JsonOut;
import trimwright.text.NoAnswerException;
import trimwright.text.Texts;

/** A wing in any state that a person sets, as {@code trimwright wing --json} computes it, and the target for its wind. */
final class ExploreRoutes implements Routes {
    private static final int LAST = WingDocument.STRIPS - 1;
    private static final int MIDDLE = WingDocument.STRIPS / 2;
    /** Chosen: the outermost strips carry hardly any load and would tell little. */
    private static final int NEAR_FOOT = 4;

    private final BoatShelf boats;
    private final TargetShelf targets;
    /** As they were last read, by id. */
    private final Map<String, BoatFile> seen = new ConcurrentHashMap<>();

    ExploreRoutes(BoatShelf boats, TargetShelf targets) {
        this.boats = boats;
        this.targets = targets;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/explore", this::sendState);
        routes.get("/api/explore/pressure", this::sendPressure);
        routes.get("/api/explore/range", this::sendRange);
        routes.get("/api/explore/target", this::sendTarget);
    }

    private void sendState(Context ctx) {
        BoatFile boat = boat(ctx);
        WingSpec wing = BoatShelf.getWing(boat, Query.text(ctx, "wing"));
        WingState state = WingState.of(wing, inputs(ctx), WingInput::key);
        ObjectNode document = JsonOut.document("explore/1");
        try {
            document.set("wing", WingDocument.of(boat, wing, targets.sections(boat, wing), state));
        } catch (NoAnswerException e) {
            // No flow is an answer here: the wing is drawn all the same, with the reason.
            document.put("reason", e.getMessage());
        }
        int strip = (int) Query.numberOr(ctx, "strip", 0, LAST, MIDDLE);
        TrimSetting trim = state.trim();
        WingShapeJson.put(
                document, wing, trim.sheet(), WingCut.atStrips(wing, trim, NEAR_FOOT, strip, LAST - NEAR_FOOT));
        // To this machine only: packing takes longer than sending.
        ctx.disableCompression();
        Json.send(ctx, document);
    }

    /** Takes some tenths of a second: for a hand at rest. */
    private void sendPressure(Context ctx) {
        BoatFile boat = boat(ctx);
        WingSpec wing = BoatShelf.getWing(boat, Query.text(ctx, "wing"));
        int strip = (int) Query.numberOr(ctx, "strip", 0, LAST, MIDDLE);
        WingState state = WingState.of(wing, inputs(ctx), WingInput::key);
        ObjectNode document = JsonOut.document("explore-pressure/1");
        try {
            document.set(
                    "pressures",
                    WingDocument.withPressures(
                                    boat, wing, targets.sections(boat, wing), state, NEAR_FOOT, strip, LAST - NEAR_FOOT)
                            .path("pressures"));
        } catch (NoAnswerException e) {
            document.put("reason", e.getMessage());
        }
        Json.send(ctx, document);
    }

    /** The boat with the content that the page has seen; a slider asks too often to read a file each time. */
    private BoatFile boat(Context ctx) {
        String id = Query.text(ctx, "boat");
        @Nullable BoatFile last = seen.get(id);
        if (last != null && last.hash().equals(ctx.queryParam("hash"))) {
            return last;
        }
        BoatFile read = boats.get(id);
        seen.put(id, read);
        return read;
    }

    private static Map<WingInput, Double> inputs(Context ctx) {
        Map<WingInput, Double> given = new EnumMap<>(WingInput.class);
        for (WingInput input : WingInput.values()) {
            if (ctx.queryParam(input.key()) != null) {
                given.put(input, Query.number(ctx, input.key(), -1e6, 1e6));
            }
        }
        return given;
    }

    /** How far each input goes for a wing. */
    private void sendRange(Context ctx) {
        WingSpec wing = BoatShelf.getWing(boats.get(Query.text(ctx, "boat")), Query.text(ctx, "wing"));
        ObjectNode document = JsonOut.document("explore-range/1");
        ObjectNode ranges = document.putObject("ranges");
        for (WingInput input : WingInput.values()) {
            ranges.putArray(input.key()).add(input.low(wing)).add(input.high(wing));
        }
        Json.send(ctx, document);
    }

    private void sendTarget(Context ctx) {
        BoatFile boat = boats.get(Query.text(ctx, "boat"));
        WingSpec wing = BoatShelf.getWing(boat, Query.text(ctx, "wing"));
        double speed = number(ctx, wing, WingInput.TRUE_WIND_SPEED);
        double angle = number(ctx, wing, WingInput.TRUE_WIND_ANGLE);
        TargetBook book =
                targets.findBook(ctx, boat, wing, targets.sections(boat, wing).source());
        if (book == null) {
            return;
        }
        TargetLookup lookup =
                book.find(WingInput.TRUE_WIND_SPEED.toSi(speed), WingInput.TRUE_WIND_ANGLE.toSi(Math.abs(angle)));
        ObjectNode document = JsonOut.document("explore-target/1");
        TargetPoint point = lookup.point();
        if (point == null || !point.isSolved()) {
            document.put("reason", Texts.of("web.explore.no_target"));
        } else {
            ObjectNode inputs = document.put("foiling", point.isFoiling()).putObject("inputs");
            TargetTrim.of(point).forEach((input, value) -> inputs.put(input.key(), value));
            inputs.put(WingInput.TRUE_WIND_ANGLE.key(), angle);
        }
        ArrayNode caveats = document.putArray("caveats");
        for (TargetCaveat caveat : lookup.caveats()) {
            caveats.add(caveat.name().toLowerCase(Locale.ROOT));
        }
        Json.send(ctx, document);
    }

    private static double number(Context ctx, WingSpec wing, WingInput input) {
        return Query.number(ctx, input.key(), input.low(wing), input.high(wing));
    }
}
