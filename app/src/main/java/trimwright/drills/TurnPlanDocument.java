package trimwright.drills;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import trimwright.boatfile.BoatFile;
import trimwright.crew.TurnConduct;
import trimwright.text.JsonOut;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.turn.SpoiltShare;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnMoves;
import trimwright.turn.TurnOutcome;
import trimwright.turn.TurnSetup;
import trimwright.turn.TurnTally;
import trimwright.units.Units;

/** The plans of a turn as {@code turn-plan/1} and as text. */
public final class TurnPlanDocument {
    /** What a tenth of the turns stays under, half of them, and nine tenths. */
    private static final double LOW = 0.1;

    private static final double HALF = 0.5;
    private static final double HIGH = 0.9;

    private TurnPlanDocument() {}

    public static ObjectNode of(BoatFile file, TurnPlanRun.Plans plans) {
        ObjectNode document = JsonOut.document("turn-plan/1", file.hash());
        document.put("boat", file.boat().name());
        document.put("wing", plans.setup().wing().id());
        document.put("kind", TurnWords.of(plans.kind()));
        document.put("begin", TurnWords.of(plans.setup().begin()));
        document.put("tws_kn", Units.toKnots(plans.setup().wind()));
        document.put("turbulence_ratio", plans.setup().intensity());
        document.put("turn_chance_max_ratio", plans.chance());
        document.put("touching", plans.setup().touching().name().toLowerCase(Locale.ROOT));
        document.set("full", plan(plans, plans.full()));
        document.set("safe", plan(plans, plans.safe()).put("kept", plans.isKept()));
        document.put("safe_said", safeSaid(plans));
        document.set("straight", tally(plans.straight()));
        document.set("naive", tally(plans.naive()));
        document.put("caution", Texts.of("turnplan.caution"));
        return document;
    }

    private static ObjectNode plan(TurnPlanRun.Plans plans, TurnPlanRun.Plan plan) {
        ObjectNode node = JsonOut.mapper().createObjectNode();
        TurnMoves moves = plan.moves();
        node.put("lead_s", moves.lead());
        node.put("ease_deg", Units.toDegrees(moves.ease()));
        node.put("over_awa_deg", Units.toDegrees(moves.over()));
        node.put("across_sheet_deg", Units.toDegrees(moves.across()));
        node.put("on_angle_deg", Units.toDegrees(moves.on()));
        node.put("power_deg", Units.toDegrees(moves.power()));
        TurnConduct conduct = moves.conduct();
        node.put("rate_deg_per_s", Units.toDegrees(conduct.rate()));
        node.put("exit_deg", Units.toDegrees(conduct.exit()));
        node.put("build_ratio", conduct.build());
        node.put("board_ratio", conduct.board());
        node.put("height_more_m", conduct.height());
        node.put("moment_ratio", conduct.moment());
        ArrayNode cues = node.putArray("cues");
        for (TurnCues.Step step : TurnCues.of(plans.setup(), plan)) {
            cues.addObject().put("cue", step.cue()).put("move", step.move()).put("after_s", step.seconds());
        }
        node.set("abort", TurnAborts.of(plan.abort()));
        node.set("sheet", TurnSheets.of(plan.tally()));
        node.put("sheet_said", TurnSheets.said(plans.kind(), plan.tally()));
        node.set("sailed", tally(plan.tally()));
        return node;
    }

    private static ObjectNode tally(TurnTally tally) {
        ObjectNode node = JsonOut.mapper().createObjectNode();
        node.put("turns", tally.turns().size());
        node.put("lost_m", tally.metres());
        node.put("lost_low_m", tally.quantile(TurnOutcome::metres, LOW));
        node.put("lost_high_m", tally.quantile(TurnOutcome::metres, HIGH));
        if (!Double.isNaN(tally.mean(TurnOutcome::logged))) {
            node.put("logged_lost_m", tally.quantile(TurnOutcome::logged, HALF));
            node.put("logged_lost_low_m", tally.quantile(TurnOutcome::logged, LOW));
            node.put("logged_lost_high_m", tally.quantile(TurnOutcome::logged, HIGH));
        }
        node.put("boat_speed_min_kn", Units.toKnots(tally.mean(TurnOutcome::least)));
        node.put("awa_max_deg", Units.toDegrees(tally.mean(TurnOutcome::widest)));
        node.put("spoilt_ratio", tally.spoilt());
        node.put("spoilt_low_ratio", tally.spoiltShare().low());
        node.put("spoilt_high_ratio", tally.spoiltShare().high());
        node.put("limit_ratio", tally.limit());
        node.put("hull_touched_ratio", tally.touched());
        node.put("windward_heel_ratio", tally.floor());
        node.put("capsized_ratio", tally.capsized());
        return node;
    }

    /** For people. */
    public static String text(TurnPlanRun.Plans plans) {
        StringBuilder text = new StringBuilder();
        text.append(Texts.of(
                        "turnplan.title",
                        plans.setup().boat().title(),
                        plans.setup().wing().id(),
                        Texts.of("turnplan.kind." + TurnWords.of(plans.kind())),
                        Texts.of("turnplan.begin." + TurnWords.of(plans.setup().begin())),
                        Units.toKnots(plans.setup().wind()),
                        100 * plans.setup().intensity()))
                .append('\n');
        if (plans.setup().begin() == TurnBegin.FOILS && plans.setup().touching() == TurnSetup.Touching.PLANNED) {
            text.append(Texts.of("turnplan.touched_down")).append('\n');
        }
        plan(text, Texts.of("turnplan.full"), plans, plans.full());
        plan(text, safeSaid(plans), plans, plans.safe());
        text.append('\n').append(sailed(plans));
        return text.append('\n')
                .append(Texts.of("turnplan.caution"))
                .append('\n')
                .toString();
    }

    /** What the safe plan is worth, in words: its chance as unseen gusts show it, or that none was found. */
    private static String safeSaid(TurnPlanRun.Plans plans) {
        SpoiltShare spoilt = plans.safe().tally().spoiltShare();
        return Texts.of(
                plans.isKept() ? "turnplan.safe" : "turnplan.not_safe",
                100 * plans.chance(),
                100 * spoilt.share(),
                plans.safe().tally().turns().size(),
                100 * spoilt.low(),
                100 * spoilt.high());
    }

    private static void plan(StringBuilder text, String title, TurnPlanRun.Plans plans, TurnPlanRun.Plan plan) {
        text.append('\n').append(title).append('\n');
        TextTable table = new TextTable(Texts.of("turnplan.head"));
        for (TurnCues.Step step : TurnCues.of(plans.setup(), plan)) {
            String after = Double.isNaN(step.seconds()) ? "-" : String.format(Locale.ROOT, "%.1f", step.seconds());
            table.row(List.of(after, step.cue(), step.move()));
        }
        text.append(table.text());
        text.append(TurnSheets.said(plans.kind(), plan.tally())).append('\n');
        text.append(TurnAborts.said(plan.abort())).append('\n');
    }

    private static String sailed(TurnPlanRun.Plans plans) {
        TextTable table = new TextTable(Texts.of("turnplan.sailed_head"));
        row(table, "turnplan.row.straight", plans.straight());
        row(table, "turnplan.row.naive", plans.naive());
        row(table, "turnplan.row.full", plans.full().tally());
        row(
                table,
                plans.isKept() ? "turnplan.row.safe" : "turnplan.row.not_safe",
                plans.safe().tally());
        return Texts.of("turnplan.sailed", plans.naive().turns().size()) + "\n" + table.text();
    }

    private static void row(TextTable table, String key, TurnTally tally) {
        table.row(List.of(
                Texts.of(key),
                number("%.0f", tally.metres()),
                number("%.1f", Units.toKnots(tally.mean(TurnOutcome::least))),
                number("%.0f", Units.toDegrees(tally.mean(TurnOutcome::widest))),
                number("%.1f", 100 * tally.spoilt()),
                number("%.0f", 100 * tally.limit()),
                number("%.0f", 100 * tally.touched()),
                number("%.0f", 100 * tally.floor()),
                number("%.0f", 100 * tally.capsized())));
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
