package trimwright.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.javalin.http.Context;
import trimwright.text.JsonOut;

/** JSON answers, as the commands write them but without indents. */
final class Json {
    private Json() {}

    static void send(Context ctx, Object document) {
        ctx.contentType("application/json").result(bytes(document));
    }

    static byte[] bytes(Object document) {
        try {
            return JsonOut.mapper().writeValueAsBytes(document);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("not writable as JSON: " + document.getClass(), e);
        }
    }
}
