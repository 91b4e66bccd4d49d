package trimwright.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Every JSON document that the program writes: same input, same bytes.
 *
 * <p>Records become objects in the order of their components, {@code boatSpeedKn} becomes {@code boat_speed_kn}. A
 * number has the fixed decimals that its key's unit asks for ({@link FixedDecimals}); NaN becomes null.
 */
public final class JsonOut {
    private static final ObjectMapper MAPPER = JsonMapper.builder(
                    JsonFactory.builder().addDecorator(FixedDecimals::decorate).build())
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .build();

    private static final DefaultPrettyPrinter PRINTER = new DefaultPrettyPrinter()
            .withObjectIndenter(new DefaultIndenter("  ", "\n"))
            .withArrayIndenter(new DefaultIndenter("  ", "\n"));

    private JsonOut() {}

    /** A new document of that schema, name and version: {@code target-book/1}. */
    public static ObjectNode document(String schema) {
        return MAPPER.createObjectNode().put("schema", schema);
    }

    /** A new document whose figures a model made for the boat file of that hash. */
    public static ObjectNode document(String schema, String boatHash) {
        ObjectNode document = document(schema);
        document.putObject("model").put("version", Version.get()).put("boat_hash", boatHash);
        return document;
    }

    /** The document for people and scripts: indented, one line feed at the end. */
    public static String text(Object document) {
        try {
            return MAPPER.writer(PRINTER).writeValueAsString(document) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("not writable as JSON: " + document.getClass(), e);
        }
    }

    /** A document that the program has printed itself. */
    public static JsonNode read(String printed) {
        try {
            return MAPPER.readTree(printed);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("what was just printed cannot be read", e);
        }
    }

    /** The mapper itself, for the server's answers and for nodes made from records. */
    public static ObjectMapper mapper() {
        return MAPPER;
    }
}
