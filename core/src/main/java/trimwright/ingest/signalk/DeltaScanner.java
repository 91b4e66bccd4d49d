package trimwright.ingest.signalk;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.DoubleList;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.ingest.LineCutter;
import trimwright.ingest.TimeText;
import trimwright.track.ChannelRule;
import trimwright.track.Paths;
import trimwright.units.Units;

/**
 * Finds the values of Signal K deltas in bytes that come in pieces of any size, a JSON text a line (Signal K
 * specification 1.8, key signalk), and tells whose each update is. Values of paths that are not in {@link Paths} are passed
 * over; one that is no number, or none that its path can have, is absent and counted. A server greets with the context of
 * its own boat, which then is {@link #SELF}. Memory is bounded: a line over {@value #LONGEST_LINE} bytes is skipped.
 */
public final class DeltaScanner {
    /** Bytes. Chosen: a server's first message can hold hundreds of values. */
    public static final int LONGEST_LINE = 1 << 20;

    /** The context of the boat on which the server is. */
    public static final String SELF = "vessels.self";

    /** Takes the values of one update as they are found. */
    public interface Sink {
        /**
         * Whether values of that context are read. Asked once for each delta.
         *
         * @param context {@code vessels.} and the boat, empty where the delta has none
         * @param line counted from 1
         */
        default boolean wants(String context, long line) {
            return true;
        }

        /**
         * @param context as above
         * @param source where the values come from, as the update names it; empty where it does not
         * @param line counted from 1
         * @param timeNanos that the update states, or {@link TimeText#NONE}
         * @param paths those of {@link Paths}, each once; may be empty
         * @param values SI, one for each path; NaN for one that is absent or that the sender takes back
         */
        void take(String context, String source, long line, long timeNanos, List<String> paths, double[] values);
    }

    private final Issues issues;
    private final Sink sink;
    private final TimeText time = new TimeText();
    private final LineCutter cutter;
    private String self = SELF;

    public DeltaScanner(Issues issues, Sink sink) {
        this.issues = issues;
        this.sink = sink;
        cutter = new LineCutter(LONGEST_LINE, issues, this::read);
    }

    /** Lines ended so far, blank ones included. */
    public long lines() {
        return cutter.lines();
    }

    /** Reads on with {@code bytes[from, to)}. */
    public void accept(byte[] bytes, int from, int to) {
        cutter.accept(bytes, from, to);
    }

    /** The input is at its end; the last line may lack its line end. */
    public void end() {
        cutter.end();
    }

    private void read(byte[] bytes, int from, int to, long line) {
        if (isBlank(bytes, from, to)) {
            return;
        }
        Map<?, ?> delta = JsonText.find(bytes, from, to) instanceof Map<?, ?> object ? object : Map.of();
        boolean greets = delta.containsKey("roles");
        if (delta.get("self") instanceof String own) {
            self = own.startsWith("vessels.") ? own : "vessels." + own;
            greets = true;
        }
        if (delta.get("updates") instanceof List<?> updates) {
            String given = delta.get("context") instanceof String named ? named : "";
            String context = given.equals(self) ? SELF : given;
            if (sink.wants(context, line)) {
                updates.forEach(update -> give(context, line, update));
            }
        } else if (!greets) {
            issues.add(IssueKind.NOT_A_DELTA, line, bytes, from, to);
        }
    }

    private static boolean isBlank(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            if (bytes[i] != ' ' && bytes[i] != '\t') {
                return false;
            }
        }
        return true;
    }

    private void give(String context, long line, Object update) {
        if (!(update instanceof Map<?, ?> parts)) {
            return;
        }
        Found found = new Found(line);
        if (parts.get("values") instanceof List<?> items) {
            for (Object item : items) {
                if (item instanceof Map<?, ?> pair && pair.get("path") instanceof String path) {
                    found.add(path, pair.get("value"));
                }
            }
        }
        long nanos = timeOf(parts.get("timestamp"), line);
        sink.take(context, DeltaSource.of(parts), line, nanos, List.copyOf(found.paths), found.values.toArray());
    }

    private long timeOf(@Nullable Object stamp, long line) {
        if (!(stamp instanceof String text)) {
            return TimeText.NONE;
        }
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        long nanos = time.iso(bytes, 0, bytes.length);
        if (nanos == TimeText.NONE) {
            issues.add(IssueKind.BAD_TIME, line, bytes, 0, bytes.length);
        }
        return nanos;
    }

    /** What one update says. */
    private final class Found {
        private final long line;
        private final List<String> paths = new ArrayList<>();
        private final DoubleList values = new DoubleList();

        Found(long line) {
            this.line = line;
        }

        private void add(String path, @Nullable Object value) {
            if (value instanceof Map<?, ?> parts) {
                boolean position = path.equals("navigation.position");
                for (Map.Entry<?, ?> part : parts.entrySet()) {
                    // A position is the one place where Signal K has degrees.
                    Object plain = position && part.getValue() instanceof Double degrees
                            ? (Object) Units.fromDegrees(degrees)
                            : part.getValue();
                    add(path + "." + part.getKey(), plain);
                }
            } else if (value != null && Paths.all().contains(path) && !paths.contains(path)) {
                paths.add(path);
                values.add(value instanceof Double number ? usable(path, number) : absent(path, value));
            }
        }

        private double absent(String path, Object value) {
            if (value != JsonText.NULL) {
                count(IssueKind.BAD_NUMBER, path, value);
            }
            return Double.NaN;
        }

        private double usable(String path, double value) {
            ChannelRule rule = ChannelRule.of(path);
            double normal = rule.normal(value);
            if (normal < rule.least() || normal > rule.most()) {
                count(IssueKind.IMPOSSIBLE_VALUE, path, value);
                return Double.NaN;
            }
            return normal;
        }

        private void count(IssueKind kind, String path, Object value) {
            byte[] text = (path + " " + value).getBytes(StandardCharsets.UTF_8);
            issues.add(kind, line, text, 0, text.length);
        }
    }
}
