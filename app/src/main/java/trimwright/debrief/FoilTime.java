package trimwright.debrief;

import com.fasterxml.jackson.databind.JsonNode;
import org.jspecify.annotations.Nullable;

/**
 * How much of her legs a boat was off the foils.
 *
 * @param sailed length of all legs (s)
 * @param down of it off the foils (s)
 * @param longest spell off them that touches a leg, null where there is none
 */
public record FoilTime(double sailed, double down, @Nullable JsonNode longest) {
    /** Of a boat of a {@code debrief/1}. */
    public static FoilTime of(JsonNode boat) {
        double sailed = 0;
        double down = 0;
        JsonNode longest = null;
        for (JsonNode leg : boat.path("legs")) {
            sailed += leg.path("duration_s").asDouble();
            for (JsonNode spell : boat.path("off_foil")) {
                double inside = inside(leg, spell);
                down += inside;
                boolean longer = longest == null
                        || spell.path("duration_s").asDouble()
                                > longest.path("duration_s").asDouble();
                longest = inside > 0 && longer ? spell : longest;
            }
        }
        return new FoilTime(sailed, down, longest);
    }

    /** Share of the legs on the foils (-); NaN without a leg. */
    public double share() {
        return sailed == 0 ? Double.NaN : 1 - down / sailed;
    }

    private static double inside(JsonNode leg, JsonNode spell) {
        double from =
                Math.max(leg.path("start_s").asDouble(), spell.path("start_s").asDouble());
        double to = Math.min(end(leg), end(spell));
        return Math.max(0, to - from);
    }

    private static double end(JsonNode span) {
        return span.path("start_s").asDouble() + span.path("duration_s").asDouble();
    }
}
