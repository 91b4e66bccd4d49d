package trimwright.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.Clock;
import trimwright.ingest.ClockMarks;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestReport;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.ingest.LineCutter;
import trimwright.ingest.LogReader;
import trimwright.ingest.SourceChoice;
import trimwright.ingest.SourceTrack;
import trimwright.ingest.TimeText;

/**
 * A log of Signal K deltas, one JSON document a line, as a server writes it. Values come in SI already; position is in
 * degrees. Updates without a time lie between those that have one, by their line. Only the boat's own values are taken:
 * other vessels in the log (heard by radio) are counted and left out.
 */
final class SignalKReader implements LogReader, LineCutter.Sink {
    /** Bytes of the longest line: a server's first message can hold hundreds of values. Chosen. */
    private static final int LONGEST = 1 << 20;

    /** ns between lines of a log with a single time: chosen. */
    private static final double PACE = 1e8;

    private static final String SELF = "vessels.self";
    private static final ObjectReader JSON = new ObjectMapper().reader();

    private final String boat;
    private final @Nullable Long start;
    private final Issues issues = new Issues();
    private final LineCutter lines = new LineCutter(LONGEST, issues, this);
    private final TimeText time = new TimeText();
    private final ClockMarks marks = new ClockMarks();
    private final Map<String, SignalKValues> values = new LinkedHashMap<>();
    private @Nullable String self;
    private long position;
    private long usable;

    SignalKReader(String boat, @Nullable Long startNanos) {
        this.boat = boat;
        start = startNanos;
    }

    /** Whether the first line is a delta, or the greeting of a server before one. */
    static boolean isLikely(byte[] head, int length) {
        String text = new String(head, 0, Math.min(length, 1 << 12), StandardCharsets.UTF_8).stripLeading();
        return text.startsWith("{") && (text.contains("\"updates\"") || text.contains("\"roles\""));
    }

    @Override
    public void accept(byte[] bytes, int from, int to) {
        lines.accept(bytes, from, to);
    }

    @Override
    public void take(byte[] bytes, int from, int to, long line) {
        if (isBlank(bytes, from, to)) {
            return;
        }
        JsonNode delta;
        try {
            delta = JSON.readTree(bytes, from, to - from);
        } catch (JsonProcessingException e) {
            issues.add(IssueKind.NOT_A_DELTA, line, bytes, from, to);
            return;
        } catch (IOException e) {
            throw new IllegalStateException("reading from memory", e);
        }
        if (delta.path("self").isTextual() && !delta.has("updates")) {
            // A server's greeting names the boat herself.
            String name = delta.path("self").asText();
            self = name.startsWith("vessels.") ? name : "vessels." + name;
            return;
        }
        if (!delta.path("updates").isArray()) {
            issues.add(IssueKind.NOT_A_DELTA, line, bytes, from, to);
            return;
        }
        String context = delta.path("context").asText(SELF);
        if (!context.equals(SELF) && !context.equals(self)) {
            issues.add(IssueKind.OTHER_VESSEL, line, context);
            return;
        }
        for (JsonNode update : delta.path("updates")) {
            take(update, line);
        }
    }

    private void take(JsonNode update, long line) {
        position++;
        long mark = -1;
        if (update.path("timestamp").isTextual()) {
            byte[] text = update.path("timestamp").asText().getBytes(StandardCharsets.UTF_8);
            long stated = time.iso(text, 0, text.length);
            if (stated == TimeText.NONE) {
                issues.add(IssueKind.BAD_TIME, line, text, 0, text.length);
            } else {
                mark = marks.add(position, line, stated);
            }
        }
        String source = SignalKValues.sourceOf(update);
        boolean any = false;
        for (JsonNode entry : update.path("values")) {
            String path = entry.path("path").asText("");
            SignalKValues.Kind kind = SignalKValues.Kind.of(path);
            if (kind != null) {
                SignalKValues rows =
                        values.computeIfAbsent(source + ' ' + path, key -> new SignalKValues(source, kind, path));
                any |= rows.add(entry.path("value"), position, line, mark, issues);
            }
        }
        usable += any ? 1 : 0;
    }

    @Override
    public IngestResult finish() {
        lines.end();
        Set<IngestNote> notes = EnumSet.noneOf(IngestNote.class);
        IngestReport report = new IngestReport(lines.lines(), usable, issues, notes);
        if (usable == 0) {
            return new IngestResult.Nothing(report);
        }
        Clock clock = Clock.of(marks, start, PACE, issues, notes);
        if (clock == null) {
            return new IngestResult.NoDate(report);
        }
        notes.add(IngestNote.TIME_FROM_STAMPS);
        List<SourceChoice.Source> sources = new ArrayList<>();
        values.values().forEach(rows -> sources.add(rows.toSource(clock, notes)));
        return SourceTrack.of(boat, sources, notes, report);
    }

    private static boolean isBlank(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            if (bytes[i] > ' ' || bytes[i] < 0) {
                return false;
            }
        }
        return true;
    }
}
