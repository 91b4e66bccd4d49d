package trimwright.keyfile;

import java.util.Comparator;

/**
 * One thing that is wrong in a file.
 *
 * @param line where, counted from 1; 0 for the file as a whole
 * @param key dotted path with places in arrays, {@code wing[0].station[2].chord_m}; empty where no key is concerned
 * @param message what was found, what was expected
 */
public record Fault(int line, String key, String message) {
    /** In the order in which they stand in the file. */
    public static final Comparator<Fault> BY_PLACE =
            Comparator.comparingInt(Fault::line).thenComparing(Fault::key);

    /** One line: {@code boat.toml:12: hulls.beam_m: ...}. */
    public String text(String file) {
        return file + (line > 0 ? ":" + line : "") + ": " + (key.isEmpty() ? "" : key + ": ") + message;
    }
}
