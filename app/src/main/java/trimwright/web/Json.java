package trimwright.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;
import java.io.IOException;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** JSON answers, as the commands write them but without indents. */
final class Json {
    private Json() {}

    static void send(Context ctx, Object document) {
        ctx.contentType("application/json").result(bytes(document));
    }

    /** What a page sent; throws {@link UserInputException} where that is no JSON. */
    static JsonNode body(Context ctx) {
        try {
            return JsonOut.mapper().readTree(ctx.bodyAsBytes());
        } catch (IOException e) {
            throw new UserInputException(Texts.of("web.refuse.body"), e);
        }
    }

    static byte[] bytes(Object document) {
        try {
            return JsonOut.mapper().writeValueAsBytes(document);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("not writable as JSON: " + document.getClass(), e);
        }
    }
}
