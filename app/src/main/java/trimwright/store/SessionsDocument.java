package trimwright.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import trimwright.text.JsonOut;

/** {@code sessions/1} (docs/formats.md): a library at a glance, for the command and for the page. */
public final class SessionsDocument {
    private SessionsDocument() {}

    /** @param sessions in the order in which they are listed */
    public static ObjectNode of(Path library, List<SessionInfo> sessions) {
        ObjectNode document = JsonOut.document("sessions/1");
        document.put("library", library.toString());
        ArrayNode array = document.putArray("sessions");
        sessions.forEach(session -> write(session, array.addObject()));
        return document;
    }

    /** One session of the list, for other documents too. */
    public static void write(SessionInfo session, ObjectNode node) {
        SessionJson.times(session, node);
        node.put("duration_s", Duration.between(session.start(), session.end()).toNanos() / 1e9);
        ArrayNode boats = node.putArray("boats");
        for (BoatInfo boat : session.boats()) {
            ArrayNode channels = boats.addObject().put("boat", boat.boat()).putArray("channels");
            boat.paths().forEach(channels::add);
        }
        ArrayNode sources = node.putArray("sources");
        session.sources().forEach(source -> SessionJson.findings(source, sources.addObject()));
    }
}
