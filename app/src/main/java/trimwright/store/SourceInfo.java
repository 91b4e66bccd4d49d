package trimwright.store;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One imported file and what was found wrong with it.
 *
 * @param sha256 of its bytes as they came, lower-case hex; also the name of the copy in {@code raw/}
 * @param name of the file, without folder
 * @param kind {@code nmea0183}, {@code csv}, {@code journal} or {@code course}
 * @param bytes length as it came
 * @param lines lines read
 * @param issues number of findings by reason (snake case), in order of name
 * @param notes how its time was found and other choices that a reader of the data should know, as sentences
 */
public record SourceInfo(
        String sha256, String name, String kind, long bytes, long lines, Map<String, Long> issues, List<String> notes) {
    /** The kind of a course file. */
    public static final String COURSE = "course";

    public SourceInfo {
        issues = Collections.unmodifiableMap(new TreeMap<>(issues));
        notes = List.copyOf(notes);
    }
}
