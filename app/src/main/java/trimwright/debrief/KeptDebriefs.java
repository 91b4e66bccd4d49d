package trimwright.debrief;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.store.Derived;
import trimwright.store.SessionInfo;
import trimwright.text.JsonOut;
import trimwright.text.Texts;

/** Debriefs of one session that were made before, as document and as text. Command and page read and keep the same. */
public final class KeptDebriefs {
    private static final String JSON = "debrief.json";
    private static final String TEXT = "debrief.txt";

    private final Derived kept;

    /** @param kept that of the session */
    public KeptDebriefs(Derived kept) {
        this.kept = kept;
    }

    /** A debrief as it is printed. */
    public record Printed(String json, String text) {}

    /**
     * What a kept debrief was judged by.
     *
     * @param boat text of the boat file
     * @param wing its id
     */
    public record Judge(String boat, String wing) {}

    /** That debrief, or null where it is to be made. */
    public @Nullable Printed find(DebriefRequest request) {
        String inputs = request.inputs();
        String json = inputs == null ? null : kept.find(inputs, JSON);
        String text = inputs == null ? null : kept.find(inputs, TEXT);
        return json == null || text == null ? null : new Printed(json, text);
    }

    /** Prints a debrief that was made, and keeps it. */
    public Printed print(DebriefRequest request, DebriefReport report) {
        SessionInfo session = request.session();
        Printed printed = new Printed(
                JsonOut.text(
                        DebriefJson.document(session.id(), request.boat(), request.wing(), request.section(), report)),
                DebriefText.of(title(request), report, session.offset()));
        String inputs = request.inputs();
        if (inputs != null) {
            kept.keep(inputs, Map.of(JSON, printed.json(), TEXT, printed.text()));
        }
        return printed;
    }

    /** Which session, and which targets. */
    private static String title(DebriefRequest request) {
        SessionInfo session = request.session();
        WingSpec wing = request.wing();
        BoatFile boat = request.boat();
        String title = Texts.of("debrief.title", session.id(), session.start());
        return wing == null || boat == null
                ? title
                : title + "\n" + Texts.of("debrief.section." + request.section().key(), boat.words(wing));
    }

    /** By what the session was judged, the newest first; without debriefs that had no boat file. */
    public List<Judge> judges() {
        List<Judge> judges = new ArrayList<>();
        for (String inputs : kept.inputs()) {
            try {
                JsonNode node = JsonOut.mapper().readTree(inputs);
                if (node.path("boat").isTextual() && node.path("wing").isTextual()) {
                    judges.add(new Judge(
                            node.path("boat").asText(), node.path("wing").asText()));
                }
            } catch (JsonProcessingException ignored) {
                // Not of a debrief, or spoiled: it only tells nothing.
            }
        }
        return judges;
    }
}
