package trimwright.ingest.signalk;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.DecimalText;

/**
 * One JSON text (RFC 8259) out of bytes: objects as maps, arrays as lists, text, numbers as {@link Double}, true and false
 * as {@link Boolean}, null as {@link #NULL}. Of a name that stands twice the last counts.
 */
final class JsonText {
    /** The JSON word null. */
    static final Object NULL = new Object();

    /** Chosen: a delta has seven levels. */
    private static final int DEEPEST = 32;

    private final byte[] bytes;
    private final int to;
    private int at;
    private int depth;

    private JsonText(byte[] bytes, int from, int to) {
        this.bytes = bytes;
        this.at = from;
        this.to = to;
    }

    /** The text in {@code bytes[from, to)}, or null where it is no JSON. */
    static @Nullable Object find(byte[] bytes, int from, int to) {
        JsonText text = new JsonText(bytes, from, to);
        Object value = text.value();
        text.space();
        return text.at == to ? value : null;
    }

    private void space() {
        while (at < to && (bytes[at] == ' ' || bytes[at] == '\t' || bytes[at] == '\r' || bytes[at] == '\n')) {
            at++;
        }
    }

    private boolean isNext(char wanted) {
        space();
        if (at < to && bytes[at] == wanted) {
            at++;
            return true;
        }
        return false;
    }

    private @Nullable Object value() {
        if (++depth > DEEPEST) {
            return null;
        }
        space();
        Object value = at >= to
                ? null
                : switch (bytes[at]) {
                    case '{' -> object();
                    case '[' -> array();
                    case '"' -> text();
                    case 't' -> word("true", true);
                    case 'f' -> word("false", false);
                    case 'n' -> word("null", NULL);
                    default -> number();
                };
        depth--;
        return value;
    }

    private @Nullable Map<String, Object> object() {
        Map<String, Object> object = new LinkedHashMap<>();
        at++;
        if (isNext('}')) {
            return object;
        }
        do {
            space();
            String name = at < to && bytes[at] == '"' ? text() : null;
            Object value = name != null && isNext(':') ? value() : null;
            if (name == null || value == null) {
                return null;
            }
            object.put(name, value);
        } while (isNext(','));
        return isNext('}') ? object : null;
    }

    private @Nullable List<Object> array() {
        List<Object> array = new ArrayList<>();
        at++;
        if (isNext(']')) {
            return array;
        }
        do {
            Object value = value();
            if (value == null) {
                return null;
            }
            array.add(value);
        } while (isNext(','));
        return isNext(']') ? array : null;
    }

    private @Nullable Object word(String word, Object value) {
        int end = at + word.length();
        boolean fits = end <= to && new String(bytes, at, word.length(), StandardCharsets.ISO_8859_1).equals(word);
        at = fits ? end : at;
        return fits ? value : null;
    }

    private @Nullable Double number() {
        int from = at;
        while (at < to && "+-.eE0123456789".indexOf(bytes[at]) >= 0) {
            at++;
        }
        double value = DecimalText.parse(bytes, from, at, (byte) '.');
        return Double.isNaN(value) ? null : value;
    }

    private @Nullable String text() {
        int from = ++at;
        boolean plain = true;
        while (at < to && bytes[at] != '"') {
            plain &= bytes[at] != '\\';
            at += bytes[at] == '\\' ? 2 : 1;
        }
        if (at >= to) {
            return null;
        }
        String raw = new String(bytes, from, at - from, StandardCharsets.UTF_8);
        at++;
        return plain ? raw : unescaped(raw);
    }

    private static @Nullable String unescaped(String raw) {
        StringBuilder text = new StringBuilder(raw.length());
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            if (c != '\\') {
                text.append(c);
                continue;
            }
            char escaped = raw.charAt(++i);
            if (escaped == 'u') {
                if (i + 4 >= raw.length()) {
                    return null;
                }
                int code = hex(raw, i + 1);
                if (code < 0) {
                    return null;
                }
                text.append((char) code);
                i += 4;
            } else {
                int known = "\"\\/bfnrt".indexOf(escaped);
                if (known < 0) {
                    return null;
                }
                text.append("\"\\/\b\f\n\r\t".charAt(known));
            }
        }
        return text.toString();
    }

    private static int hex(String text, int from) {
        int code = 0;
        for (int i = from; i < from + 4; i++) {
            int digit = Character.digit(text.charAt(i), 16);
            if (digit < 0) {
                return -1;
            }
            code = code * 16 + digit;
        }
        return code;
    }
}
