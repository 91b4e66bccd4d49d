package trimwright.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;

/** JSON answers: UTF-8, whole words as keys, the schema first. */
final class Json {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Json() {}

    /** An empty document of that schema, for example {@code boats/1}. */
    static ObjectNode document(String schema) {
        return JsonNodeFactory.instance.objectNode().put("schema", schema);
    }

    static byte[] bytes(Object tree) {
        try {
            return MAPPER.writeValueAsBytes(tree);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of our own making cannot be written as JSON", e);
        }
    }

    static void send(Context ctx, Object tree) {
        sendBytes(ctx, bytes(tree));
    }

    static void sendText(Context ctx, String json) {
        sendBytes(ctx, json.getBytes(StandardCharsets.UTF_8));
    }

    private static void sendBytes(Context ctx, byte[] json) {
        ctx.contentType("application/json").result(json);
    }
}
