package trimwright.debrief;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.text.JsonOut;
import trimwright.text.Texts;

/** The quick debrief as {@code quick-debrief/1} and as text. */
public final class QuickDocument {
    private final JsonNode debrief;
    private final String own;
    private final List<QuickDebrief.Line> lines;
    private final @Nullable CrewLine before;
    private final @Nullable CrewLine next;

    /**
     * Of a {@code debrief/1}.
     *
     * @param own name of the boat
     * @param said by crews of the library
     */
    public QuickDocument(JsonNode debrief, String own, CrewLines said) {
        this.debrief = debrief;
        this.own = own;
        lines = QuickDebrief.of(debrief, own);
        before = said.before(own, debrief.path("start_utc").asText());
        next = said.after(own, debrief.path("session").asText());
    }

    public ObjectNode json() {
        ObjectNode document = JsonOut.document("quick-debrief/1");
        document.set("session", debrief.path("session"));
        document.put("boat", own);
        document.set("reference", QuickDebrief.boat(debrief, own).path("reference"));
        ArrayNode list = document.putArray("lines");
        for (QuickDebrief.Line line : lines) {
            list.addObject()
                    .put("subject", QuickDebrief.word(line.subject()))
                    .put("sentence", line.sentence())
                    .put("start_s", line.start())
                    .put("duration_s", line.duration());
        }
        document.put("said_before", before == null ? null : before.judge(debrief));
        document.put("next", next == null ? null : next.text());
        document.put("next_cause", next == null ? null : next.cause());
        document.set("caution", debrief.path("caution"));
        return document;
    }

    public String text() {
        StringBuilder text = new StringBuilder(
                        Texts.of("quick.title", own, debrief.path("session").asText()))
                .append('\n');
        for (QuickDebrief.Line line : lines) {
            text.append(Texts.of(
                            "quick.line",
                            Texts.of("quick.subject." + QuickDebrief.word(line.subject())),
                            line.sentence()))
                    .append('\n');
        }
        if (before != null) {
            text.append(before.judge(debrief)).append('\n');
        }
        text.append(next == null ? Texts.of("quick.next_none") : Texts.of("quick.next", next.text()))
                .append('\n');
        return text.append(debrief.path("caution").asText()).append('\n').toString();
    }
}
