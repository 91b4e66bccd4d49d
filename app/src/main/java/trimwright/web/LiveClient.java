package trimwright.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jetty.websocket.api.Callback;
import org.eclipse.jetty.websocket.api.Session;
import trimwright.recording.Absent;
import trimwright.text.JsonOut;

/** One page that follows: what it has been told, and whether it has read it. Only the sending thread offers. */
final class LiveClient {
    private final Session session;
    private final AtomicBoolean reading = new AtomicBoolean();
    private Map<String, Object> told = Map.of();
    private long seq;

    LiveClient(Session session) {
        this.session = session;
    }

    /** The whole state as one frame. */
    static ObjectNode whole(Map<String, Object> state, String time, long seq) {
        ObjectNode frame = JsonOut.document("live/1").put("seq", seq).put("time_utc", time);
        put(frame.putObject("state"), state);
        return frame;
    }

    /** Sends what changed since the last frame, unless that one is still under way. */
    void offer(Map<String, Object> state, String time) {
        if (!session.isOpen() || !reading.compareAndSet(false, true)) {
            return;
        }
        ObjectNode frame = seq == 0 ? whole(state, time, 0) : changes(state, time);
        seq++;
        told = state;
        String text = new String(Json.bytes(frame), StandardCharsets.UTF_8);
        // A failed frame ends the connection; the page connects again and gets the whole state.
        session.sendText(text, Callback.from(() -> reading.set(false), fault -> session.disconnect()));
    }

    private ObjectNode changes(Map<String, Object> state, String time) {
        Map<String, Object> changed = new HashMap<>();
        state.forEach((name, value) -> {
            if (!value.equals(told.get(name))) {
                changed.put(name, value);
            }
        });
        told.keySet().stream()
                .filter(name -> !state.containsKey(name))
                .forEach(name -> changed.put(name, Absent.VALUE));
        ObjectNode frame = JsonOut.mapper().createObjectNode().put("seq", seq).put("time_utc", time);
        put(frame.putObject("changed"), changed);
        return frame;
    }

    private static void put(ObjectNode into, Map<String, Object> values) {
        values.forEach((name, value) -> {
            if (value instanceof Double number) {
                into.put(name, number);
            } else if (value instanceof Long number) {
                into.put(name, number);
            } else if (value instanceof String text) {
                into.put(name, text);
            } else if (value instanceof List<?> list) {
                var array = into.putArray(name);
                list.forEach(one -> array.addPOJO(one));
            } else {
                into.putNull(name);
            }
        });
    }
}
