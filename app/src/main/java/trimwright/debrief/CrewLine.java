package trimwright.debrief;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/**
 * What a crew says after a race that it will change, with what the cause took of it then.
 *
 * @param session after which it was said
 * @param boat whose crew
 * @param startUtc begin of the session, as in its debrief
 * @param cause as in {@code debrief/1}
 * @param text in the crew's words
 * @param loss of the cause then (s)
 * @param error half of its interval (s)
 * @param minutes of the legs then
 */
public record CrewLine(
        String session,
        String boat,
        String startUtc,
        String cause,
        String text,
        double loss,
        double error,
        double minutes) {
    /**
     * A line said after the session of a debrief.
     *
     * @throws UserInputException where the boat's ledger has no such cause
     */
    public static CrewLine of(JsonNode debrief, String own, String cause, String text) {
        JsonNode boat = QuickDebrief.boat(debrief, own);
        CauseLoss then = find(boat, cause);
        return new CrewLine(
                debrief.path("session").asText(),
                own,
                debrief.path("start_utc").asText(),
                cause,
                text.strip(),
                then.loss(),
                then.error(),
                then.minutes());
    }

    private static CauseLoss find(JsonNode boat, String cause) {
        return CauseLoss.of(boat).stream()
                .filter(one -> one.cause().equals(cause))
                .findFirst()
                .orElseThrow(() -> new UserInputException(Texts.of(
                        "quick.no_cause",
                        cause,
                        String.join(
                                ", ",
                                CauseLoss.of(boat).stream()
                                        .map(CauseLoss::cause)
                                        .toList()))));
    }

    /** In a sentence, what came of it in a later session: seconds a minute then and now, and whether that can be told apart. */
    public String judge(JsonNode debrief) {
        CauseLoss now = find(QuickDebrief.boat(debrief, boat), cause);
        if (minutes == 0 || now.minutes() == 0) {
            return Texts.of("quick.said.no_leg", text);
        }
        double before = loss / minutes;
        double after = now.loss() / now.minutes();
        double half = StrictMath.hypot(error / minutes, now.error() / now.minutes());
        double change = after - before;
        String key =
                Math.abs(change) <= half ? "quick.said.open" : change < 0 ? "quick.said.better" : "quick.said.worse";
        return Texts.of(key, text, Texts.of("debrief.cause." + cause), before, after, Math.abs(change), half);
    }

    ObjectNode put(ObjectNode to) {
        return to.put("session", session)
                .put("boat", boat)
                .put("start_utc", startUtc)
                .put("cause", cause)
                .put("text", text)
                .put("loss_s", loss)
                .put("error_s", error)
                .put("legs_min", minutes);
    }

    static CrewLine of(JsonNode node) {
        return new CrewLine(
                node.path("session").asText(),
                node.path("boat").asText(),
                node.path("start_utc").asText(),
                node.path("cause").asText(),
                node.path("text").asText(),
                node.path("loss_s").asDouble(),
                node.path("error_s").asDouble(),
                node.path("legs_min").asDouble());
    }
}
