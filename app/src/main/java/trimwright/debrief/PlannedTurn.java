package trimwright.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.plans.KeptPlan;
import trimwright.segment.CueTimes;
import trimwright.segment.FoilingRule;
import trimwright.segment.Span;
import trimwright.segment.Turn;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.turn.TurnBegin;
import trimwright.units.Units;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * A turn that was sailed beside the kept plan of its kind and wind: how long after its cue each thing was done, and the metres lost
 * against the plan's own turns.
 */
final class PlannedTurn {
    /** A plan is held against turns in a wind that differs by no more (m/s): chosen, two knots. */
    private static final double WIND = Units.fromKnots(2);

    /** The wind before the turn is a mean over so long (s): chosen, as the turn's other figures. */
    private static final double BEFORE = 10;

    /** What a hand needs from the cue on in the plan's turns (s): the middle of what they drew. */
    private static final double HAND = 0.325;

    private final KeptPlan plan;
    private final CueTimes cues;
    private final double step;
    private final @Nullable Double lost;
    private final boolean crosses;

    private PlannedTurn(KeptPlan plan, CueTimes cues, double step, @Nullable Double lost, boolean crosses) {
        this.plan = plan;
        this.cues = cues;
        this.step = step;
        this.lost = lost;
        this.crosses = crosses;
    }

    /** Null where no plan of that kind, beginning and wind is kept. */
    static @Nullable PlannedTurn find(BoatDebrief boat, Turn turn, List<KeptPlan> plans) {
        WindTrack track = boat.wind();
        int from = turn.span().from();
        int steps = track.clock().steps(BEFORE);
        double wind = track.has(Quantity.TWS)
                ? track.mean(Quantity.TWS, Math.max(0, from - steps), Math.max(1, from))
                : Double.NaN;
        KeptPlan plan = plans.stream()
                .filter(one -> one.kind().name().equals(turn.kind().name()))
                .filter(one -> Math.abs(one.wind() - wind) <= WIND && fits(boat, turn, one.begin()))
                .min(Comparator.comparingDouble((KeptPlan one) -> Math.abs(one.wind() - wind))
                        .thenComparing(KeptPlan::begin))
                .orElse(null);
        if (plan == null) {
            return null;
        }
        Turn.Recovery recovery = BoatDebrief.recovery(turn);
        return new PlannedTurn(
                plan,
                CueTimes.of(track, turn, plan.moves().over(), plan.moves().on()),
                track.clock().step(),
                recovery == null ? null : recovery.metresLost(),
                turn.kind().changesTack());
    }

    /** A boat that was off the foils as the turn began did another turn than one that flew; where that is not told, she flew. */
    private static boolean fits(BoatDebrief boat, Turn turn, TurnBegin begin) {
        int from = turn.span().from();
        boolean isOff = !(boat.foiling() instanceof FoilingRule.NotTold)
                && boat.pieces().offFoil().stream()
                        .anyMatch(spell -> spell.span().overlaps(new Span(from, from + 1)));
        return isOff == (begin != TurnBegin.FOILS);
    }

    void put(ObjectNode node) {
        node.put("file", plan.name());
        node.put("form", plan.isSafe() ? "safe" : "full");
        node.put("begin", word(plan.begin()));
        node.put("tws_kn", Units.toKnots(plan.wind()));
        List<String> lacking = new ArrayList<>();
        if (crosses) {
            node.put("over_awa_deg", Units.toDegrees(plan.moves().over()));
            at(node, "over_cue_s", cues.over());
            at(node, "wind_across_s", cues.across());
            at(node, "camber_started_s", cues.camber());
            told(node, "camber_after_cue_s", camberLate(), "camber", lacking);
        }
        node.put("on_angle_deg", Units.toDegrees(plan.moves().on()));
        at(node, "on_cue_s", cues.on());
        at(node, "sheet_there_s", cues.sheet());
        told(node, "sheet_after_cue_s", sheetLate(), "sheet", lacking);
        node.put("hand_s", HAND);
        Double eased = cues.eased();
        node.put("ease_deg", Units.toDegrees(plan.moves().ease()));
        told(node, "eased_deg", eased == null ? null : Units.toDegrees(eased), "ease", lacking);
        lacking.add("boards");
        KeptPlan.Band band = plan.lost();
        Double metres = lost;
        node.put("lost_m", metres);
        node.put("plan_lost_low_m", band == null ? null : band.low());
        node.put("plan_lost_m", band == null ? null : band.median());
        node.put("plan_lost_high_m", band == null ? null : band.high());
        node.put("lost_is", lostIs());
        if (metres == null || band == null) {
            lacking.add("lost");
        }
        ArrayNode cannot = node.putArray("cannot_tell");
        lacking.forEach(cannot::add);
        node.put("title", title());
        node.put("said", said());
    }

    /** The same as a sentence. */
    String said() {
        List<String> parts = new ArrayList<>();
        if (crosses) {
            parts.add(late(
                    "debrief.plan.camber",
                    camberLate(),
                    Units.toDegrees(plan.moves().over())));
        }
        parts.add(late(
                crosses ? "debrief.plan.sheet" : "debrief.plan.sheet_one_tack",
                sheetLate(),
                Units.toDegrees(plan.moves().on())));
        Double eased = cues.eased();
        double asked = Units.toDegrees(plan.moves().ease());
        parts.add(
                eased == null
                        ? Texts.of("debrief.plan.ease.cannot", asked)
                        : Texts.of("debrief.plan.ease", Units.toDegrees(eased), asked));
        parts.add(Texts.of("debrief.plan.boards.cannot"));
        KeptPlan.Band band = plan.lost();
        Double metres = lost;
        parts.add(
                metres == null || band == null
                        ? Texts.of("debrief.plan.lost.cannot")
                        : Texts.of("debrief.plan.lost." + lostIs(), metres, band.low(), band.high()));
        return String.join("; ", parts) + ".";
    }

    /** Which plan. */
    String title() {
        return Texts.of(
                "debrief.plan.title",
                Texts.of(plan.isSafe() ? "debrief.plan.safe" : "debrief.plan.full"),
                Units.toKnots(plan.wind()),
                Texts.of("debrief.plan.begin." + word(plan.begin())));
    }

    private String lostIs() {
        KeptPlan.Band band = plan.lost();
        Double metres = lost;
        if (metres == null || band == null) {
            return "cannot_tell";
        }
        return metres < band.low() ? "less" : metres > band.high() ? "more" : "within";
    }

    private static String late(String key, @Nullable Double late, double angle) {
        if (late == null) {
            return Texts.of(key + ".cannot", angle);
        }
        return Texts.of(key + (late < 0 ? ".before" : ".after"), Math.abs(late), angle);
    }

    private @Nullable Double camberLate() {
        return between(cues.over(), cues.camber());
    }

    private @Nullable Double sheetLate() {
        return between(cues.on(), cues.sheet());
    }

    private @Nullable Double between(@Nullable Integer cue, @Nullable Integer done) {
        return cue == null || done == null ? null : (done - cue) * step;
    }

    private void at(ObjectNode node, String key, @Nullable Integer instant) {
        node.put(key, instant == null ? null : instant * step);
    }

    private static void told(ObjectNode node, String key, @Nullable Double value, String what, List<String> lacking) {
        node.put(key, value);
        if (value == null) {
            lacking.add(what);
        }
    }

    private static String word(Enum<?> of) {
        return of.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** For a turn's record; null where there is no plan. */
    static @Nullable ObjectNode node(BoatDebrief boat, Turn turn, List<KeptPlan> plans) {
        PlannedTurn planned = find(boat, turn, plans);
        if (planned == null) {
            return null;
        }
        ObjectNode node = JsonOut.mapper().createObjectNode();
        planned.put(node);
        return node;
    }
}
