package trimwright.plans;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.crew.TurnConduct;
import trimwright.crew.TurnKind;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnMoves;
import trimwright.units.Units;

/**
 * A turn plan that was kept: the safe one where it keeps its chance, else the full one.
 *
 * @param name of its file
 * @param text of its file
 * @param boat name
 * @param wing id
 * @param wind it was made for, at 10 m (m/s)
 * @param isSafe whether it is the safe plan
 * @param lost what its turns lost as a debrief counts it, null for turns on one tack
 */
public record KeptPlan(
        String name,
        String text,
        String boat,
        String wing,
        TurnKind kind,
        TurnBegin begin,
        double wind,
        boolean isSafe,
        TurnMoves moves,
        @Nullable Band lost) {
    /**
     * Metres of a plan's turns.
     *
     * @param low a tenth of them stays under
     * @param median half
     * @param high nine tenths
     */
    public record Band(double low, double median, double high) {}

    /** @throws IllegalArgumentException where a key is missing or is something else */
    static KeptPlan of(String name, String text, JsonNode document) {
        boolean isSafe = document.path("safe").path("kept").asBoolean(false);
        JsonNode plan = document.path(isSafe ? "safe" : "full");
        TurnConduct conduct = new TurnConduct(
                degrees(plan, "rate_deg_per_s"),
                degrees(plan, "exit_deg"),
                number(plan, "build_ratio"),
                number(plan, "board_ratio"),
                number(plan, "height_more_m"),
                number(plan, "moment_ratio"));
        TurnMoves moves = new TurnMoves(
                number(plan, "lead_s"),
                degrees(plan, "ease_deg"),
                degrees(plan, "over_awa_deg"),
                degrees(plan, "across_sheet_deg"),
                degrees(plan, "on_angle_deg"),
                degrees(plan, "power_deg"),
                conduct);
        JsonNode sailed = plan.path("sailed");
        return new KeptPlan(
                name,
                text,
                word(document, "boat"),
                word(document, "wing"),
                TurnKind.valueOf(constant(document, "kind")),
                TurnBegin.valueOf(constant(document, "begin")),
                Units.fromKnots(number(document, "tws_kn")),
                isSafe,
                moves,
                sailed.path("logged_lost_m").isNumber()
                        ? new Band(
                                number(sailed, "logged_lost_low_m"),
                                number(sailed, "logged_lost_m"),
                                number(sailed, "logged_lost_high_m"))
                        : null);
    }

    private static String constant(JsonNode node, String key) {
        return word(node, key).toUpperCase(Locale.ROOT).replace('-', '_');
    }

    private static String word(JsonNode node, String key) {
        if (!node.path(key).isTextual()) {
            throw new IllegalArgumentException(key);
        }
        return node.path(key).asText();
    }

    private static double degrees(JsonNode node, String key) {
        return Units.fromDegrees(number(node, key));
    }

    private static double number(JsonNode node, String key) {
        if (!node.path(key).isNumber()) {
            throw new IllegalArgumentException(key);
        }
        return node.path(key).asDouble();
    }
}
