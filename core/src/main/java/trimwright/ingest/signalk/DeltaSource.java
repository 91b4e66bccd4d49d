package trimwright.ingest.signalk;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Where the values of an update come from, as the update tells it. */
final class DeltaSource {
    /** What a source object says of itself, from the wire to the message (Signal K specification 1.8, key signalk). */
    private static final List<String> PARTS = List.of("label", "talker", "sentence", "src", "pgn");

    private DeltaSource() {}

    /** The reference to the source, else what the source object says joined by dashes; empty where neither is given. */
    static String of(Map<?, ?> update) {
        String reference = text(update.get("$source"));
        if (!reference.isEmpty() || !(update.get("source") instanceof Map<?, ?> object)) {
            return reference;
        }
        StringBuilder joined = new StringBuilder();
        for (String key : PARTS) {
            String part = text(object.get(key));
            joined.append(joined.isEmpty() || part.isEmpty() ? "" : "-").append(part);
        }
        return joined.toString();
    }

    private static String text(@Nullable Object value) {
        if (value instanceof Double number && number == Math.rint(number)) {
            // The number of a message or an address, which has no decimals.
            return Long.toString(number.longValue());
        }
        return value instanceof String text ? text : "";
    }

    /** For names of groups: letters, digits and dashes. */
    static String word(String source) {
        String plain =
                source.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return plain.isEmpty() ? "unnamed" : plain;
    }
}
