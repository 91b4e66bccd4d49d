package trimwright.ingest.signalk;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.ingest.TimeText;
import trimwright.track.ChannelRule;
import trimwright.track.Paths;
import trimwright.units.Units;

/**
 * Finds the values of Signal K deltas in bytes that come in pieces of any size, a JSON text a line (Signal K
 * specification 1.8, key signalk). Values of paths that are not in {@link Paths} and values that are no numbers are passed
 * over. A server greets with the context of its own boat, which then is {@link #SELF}. Memory is bounded: a line over {@value
 * #LONGEST_LINE} bytes is skipped.
 */
public final class DeltaScanner {
    /** Chosen: some hundred values in one delta. */
    public static final int LONGEST_LINE = 65_536;

    /** The context of the boat on which the server is. */
    public static final String SELF = "vessels.self";

    /** Takes the values of one update as they are found. */
    public interface Sink {
        /**
         * @param context {@code vessels.} and the boat, empty where the delta has none
         * @param line counted from 1
         * @param timeNanos that the update states, or {@link TimeText#NONE}
         * @param paths at least one
         * @param values SI, one for each path; NaN for one that the sender takes back
         */
        void take(String context, long line, long timeNanos, List<String> paths, double[] values);
    }

    private final Issues issues;
    private final Sink sink;
    private final TimeText time = new TimeText();
    private final byte[] held = new byte[LONGEST_LINE];
    private int length;
    private boolean skipping;
    private String self = SELF;
    private long lines;

    public DeltaScanner(Issues issues, Sink sink) {
        this.issues = issues;
        this.sink = sink;
    }

    /** Lines ended so far, blank ones included. */
    public long lines() {
        return lines;
    }

    /** Reads on with {@code bytes[from, to)}. */
    public void accept(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            if (bytes[i] == '\n') {
                end();
            } else if (length == LONGEST_LINE) {
                skipping = true;
            } else {
                held[length++] = bytes[i];
            }
        }
    }

    /** A line ends, also without a line feed. */
    public void end() {
        lines++;
        if (skipping) {
            issues.add(IssueKind.TOO_LONG, lines, held, 0, length);
        } else if (!isBlank()) {
            read();
        }
        length = 0;
        skipping = false;
    }

    private boolean isBlank() {
        for (int i = 0; i < length; i++) {
            if (held[i] != ' ' && held[i] != '\r' && held[i] != '\t') {
                return false;
            }
        }
        return true;
    }

    private void read() {
        Object text = JsonText.find(held, 0, length);
        if (!(text instanceof Map<?, ?> delta)) {
            issues.add(IssueKind.NOT_A_DELTA, lines, held, 0, length);
            return;
        }
        if (delta.get("self") instanceof String own) {
            self = own.startsWith("vessels.") ? own : "vessels." + own;
        }
        String given = delta.get("context") instanceof String named ? named : "";
        String context = given.equals(self) ? SELF : given;
        if (delta.get("updates") instanceof List<?> updates) {
            for (Object update : updates) {
                if (update instanceof Map<?, ?> parts && parts.get("values") instanceof List<?> values) {
                    give(context, timeOf(parts.get("timestamp")), values);
                }
            }
        }
    }

    private long timeOf(@Nullable Object stamp) {
        if (!(stamp instanceof String text)) {
            return TimeText.NONE;
        }
        byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
        long nanos = time.iso(bytes, 0, bytes.length);
        if (nanos == TimeText.NONE) {
            issues.add(IssueKind.BAD_TIME, lines, held, 0, length);
        }
        return nanos;
    }

    private void give(String context, long nanos, List<?> items) {
        List<String> paths = new ArrayList<>();
        List<Double> found = new ArrayList<>();
        for (Object item : items) {
            if (item instanceof Map<?, ?> pair && pair.get("path") instanceof String path) {
                add(path, pair.get("value"), paths, found);
            }
        }
        if (!paths.isEmpty()) {
            sink.take(
                    context,
                    lines,
                    nanos,
                    List.copyOf(paths),
                    found.stream().mapToDouble(value -> value).toArray());
        }
    }

    private void add(String path, @Nullable Object value, List<String> paths, List<Double> found) {
        if (value instanceof Map<?, ?> parts) {
            boolean position = path.equals("navigation.position");
            for (Map.Entry<?, ?> part : parts.entrySet()) {
                // A position is the one place where Signal K has degrees.
                Object plain = position && part.getValue() instanceof Double degrees
                        ? (Object) Units.fromDegrees(degrees)
                        : part.getValue();
                add(path + "." + part.getKey(), plain, paths, found);
            }
        } else if (Paths.all().contains(path) && !paths.contains(path)) {
            if (value instanceof Double number) {
                paths.add(path);
                found.add(usable(path, number));
            } else if (value == JsonText.NULL) {
                paths.add(path);
                found.add(Double.NaN);
            }
        }
    }

    private double usable(String path, double value) {
        ChannelRule rule = ChannelRule.of(path);
        double normal = rule.normal(value);
        if (normal < rule.least() || normal > rule.most()) {
            issues.add(IssueKind.IMPOSSIBLE_VALUE, lines, held, 0, length);
            return Double.NaN;
        }
        return normal;
    }
}
