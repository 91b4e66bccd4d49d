package trimwright.intake;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.Clock;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.ingest.Sampled;
import trimwright.ingest.SourceChoice;
import trimwright.ingest.Timeline;
import trimwright.track.ChannelRule;
import trimwright.track.Paths;

/** All values that one source sent for one Signal K path, in order of arrival, before their times are known. */
final class SignalKValues {
    /** How a value becomes channels. */
    enum Kind {
        /** A number in SI. */
        NUMBER,
        /** An object with latitude and longitude in degrees. */
        POSITION,
        /** An object with roll and pitch in radians. */
        ATTITUDE;

        /** The kind of a path, or null for one that is not read. */
        static @Nullable Kind of(String path) {
            return switch (path) {
                case "navigation.position" -> POSITION;
                case "navigation.attitude" -> ATTITUDE;
                default -> Paths.all().contains(path) ? NUMBER : null;
            };
        }

        private List<String> channels(String path) {
            return switch (this) {
                case NUMBER -> List.of(path);
                case POSITION -> List.of(Paths.LATITUDE, Paths.LONGITUDE);
                case ATTITUDE -> List.of(Paths.ROLL, Paths.PITCH);
            };
        }
    }

    private record Row(long position, long line, int mark, double first, double second) {}

    private final String source;
    private final Kind kind;
    private final List<String> channels;
    private final ChannelRule rule;
    private final String word;
    private final List<Row> rows = new ArrayList<>();

    SignalKValues(String source, Kind kind, String path) {
        this.source = source;
        this.kind = kind;
        channels = kind.channels(path);
        rule = ChannelRule.of(path);
        word = path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }

    /** A name for where an update comes from: its reference, or what its source object says of itself. */
    static String sourceOf(JsonNode update) {
        String text = update.path("$source").asText("");
        if (text.isEmpty()) {
            JsonNode object = update.path("source");
            StringBuilder joined = new StringBuilder();
            for (String key : List.of("label", "talker", "sentence", "src", "pgn")) {
                String part = object.path(key).asText("");
                joined.append(joined.length() == 0 || part.isEmpty() ? "" : "-").append(part);
            }
            text = joined.toString();
        }
        String plain =
                text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return plain.isEmpty() ? "unnamed" : plain;
    }

    /** Adds a value; false where it holds none. */
    boolean add(JsonNode value, long position, long line, long mark, Issues issues) {
        double first;
        double second = Double.NaN;
        switch (kind) {
            case POSITION -> {
                first = Math.toRadians(number(value.path("latitude"), line, issues));
                second = Math.toRadians(number(value.path("longitude"), line, issues));
            }
            case ATTITUDE -> {
                first = number(value.path("roll"), line, issues);
                second = number(value.path("pitch"), line, issues);
            }
            default -> first = number(value, line, issues);
        }
        if (Double.isNaN(first) && Double.isNaN(second)) {
            return false;
        }
        rows.add(new Row(position, line, (int) mark, kind == Kind.NUMBER ? rule.normal(first) : first, second));
        return true;
    }

    private static double number(JsonNode value, long line, Issues issues) {
        if (value.isNumber()) {
            return value.asDouble();
        }
        if (!value.isNull() && !value.isMissingNode()) {
            issues.add(IssueKind.BAD_NUMBER, line, value.toString());
        }
        return Double.NaN;
    }

    /** The values with their times. */
    SourceChoice.Source toSource(Clock clock, Set<IngestNote> notes) {
        Sampled samples = new Sampled(channels);
        for (Row row : rows) {
            long at = row.mark() >= 0 ? clock.ofMark(row.mark(), row.position()) : clock.at(row.position());
            if (at == Timeline.NONE) {
                continue;
            }
            boolean far = row.mark() < 0 && clock.isFarOutside(row.position());
            if (far) {
                notes.add(IngestNote.TIME_EXTRAPOLATED);
            }
            samples.begin(at, row.line(), far ? Sampled.TimeOrigin.REPAIRED : Sampled.TimeOrigin.LOG);
            samples.put(0, row.first());
            if (channels.size() > 1) {
                samples.put(1, row.second());
            }
        }
        return new SourceChoice.Source("signalk-" + source + "-" + word, 0, SourceChoice.Origin.DEVICE, samples);
    }
}
