package trimwright.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import java.util.TreeSet;

/** All text that the pages show, as one document. */
final class TextRoutes implements Routes {
    private static final String BUNDLE = "trimwright/web/text.properties";

    private final ObjectNode text = Json.document("text/1");

    TextRoutes() {
        Properties bundle = new Properties();
        try {
            bundle.load(new StringReader(new String(Bundled.get(BUNDLE), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the bundled file " + BUNDLE, e);
        }
        for (String key : new TreeSet<>(bundle.stringPropertyNames())) {
            text.put(key, bundle.getProperty(key));
        }
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/text", ctx -> Json.send(ctx, text));
    }
}
