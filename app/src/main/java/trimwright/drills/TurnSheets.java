package trimwright.drills;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.ToDoubleFunction;
import trimwright.crew.TurnKind;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.turn.TurnOutcome;
import trimwright.turn.TurnTally;
import trimwright.units.Units;

/** What the sheet has to do in a turn, and how far the apparent wind goes aft: medians, with what nine tenths of the turns stay under. */
final class TurnSheets {
    private static final double HALF = 0.5;
    private static final double MOST = 0.9;

    private TurnSheets() {}

    static ObjectNode of(TurnTally tally) {
        ObjectNode node = JsonOut.mapper().createObjectNode();
        node.put("eased_before_bow_deg", degrees(tally, turn -> turn.sheetWork().eased(), HALF));
        node.put("awa_max_deg", degrees(tally, TurnOutcome::widest, HALF));
        node.put("awa_max_high_deg", degrees(tally, TurnOutcome::widest, MOST));
        node.put("hauled_deg", degrees(tally, turn -> turn.sheetWork().hauled(), HALF));
        node.put("hauled_high_deg", degrees(tally, turn -> turn.sheetWork().hauled(), MOST));
        node.put("hauled_in_s", tally.quantile(turn -> turn.sheetWork().time(), HALF));
        return node;
    }

    static String said(TurnKind kind, TurnTally tally) {
        boolean crosses = kind == TurnKind.TACK || kind == TurnKind.GYBE;
        double eased = degrees(tally, turn -> turn.sheetWork().eased(), HALF);
        return Texts.of(
                crosses ? "turnplan.sheet_across" : "turnplan.sheet",
                Texts.of(eased < 0 ? "turnplan.sheet.hauled" : "turnplan.sheet.eased", Math.abs(eased)),
                degrees(tally, TurnOutcome::widest, HALF),
                degrees(tally, TurnOutcome::widest, MOST),
                degrees(tally, turn -> turn.sheetWork().hauled(), HALF),
                tally.quantile(turn -> turn.sheetWork().time(), HALF),
                degrees(tally, turn -> turn.sheetWork().hauled(), MOST));
    }

    private static double degrees(TurnTally tally, ToDoubleFunction<TurnOutcome> figure, double share) {
        return Units.toDegrees(tally.quantile(figure, share));
    }
}
