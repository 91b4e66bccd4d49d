package trimwright.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import java.util.List;
import trimwright.text.JsonOut;
import trimwright.text.Texts;

/** All text that the pages show, as one document. */
final class TextRoutes implements Routes {
    private static final List<String> PREFIXES = List.of("web.", "debrief.", "calibrate.");

    private final ObjectNode text = JsonOut.document("text/1");

    TextRoutes() {
        for (String prefix : PREFIXES) {
            Texts.startingWith(prefix).forEach(text::put);
        }
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/text", ctx -> Json.send(ctx, text));
    }
}
