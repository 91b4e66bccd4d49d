package trimwright.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import trimwright.debrief.CauseLoss;
import trimwright.store.UtcOffset;

/** A {@code debrief/1} as the report reads it. */
final class Day {
    static final String NONE = "-";
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final JsonNode document;
    private final UtcOffset offset;
    private final Instant start;
    private final List<JsonNode> boats = new ArrayList<>();

    Day(JsonNode document, UtcOffset offset) {
        this.document = document;
        this.offset = offset;
        start = Instant.parse(document.path("start_utc").asText());
        document.path("boats").forEach(boats::add);
    }

    JsonNode document() {
        return document;
    }

    UtcOffset offset() {
        return offset;
    }

    /** In the order of the session. */
    List<JsonNode> boats() {
        return boats;
    }

    static String name(JsonNode boat) {
        return boat.path("boat").asText();
    }

    BoatInk ink(JsonNode boat) {
        return BoatInk.of(boats.indexOf(boat));
    }

    /** Those first that lost least. */
    List<JsonNode> byLoss() {
        return boats.stream().sorted(Comparator.comparingDouble(Day::lost)).toList();
    }

    /** Time of day at so many seconds from the session's begin. */
    String time(double seconds) {
        return time(start, offset, seconds);
    }

    /** The same of a session that begins there. */
    static String time(Instant start, UtcOffset offset, double seconds) {
        return TIME.format(start.plusMillis((long) (1000 * seconds)).plusSeconds(offset.seconds()));
    }

    String date() {
        return DateTimeFormatter.ISO_LOCAL_DATE.withZone(ZoneOffset.UTC).format(start.plusSeconds(offset.seconds()));
    }

    /** Seconds lost over all legs to a cause; a gain is negative. */
    static double lostTo(JsonNode boat, String cause) {
        return CauseLoss.of(boat).stream()
                .filter(loss -> loss.cause().equals(cause))
                .mapToDouble(CauseLoss::loss)
                .sum();
    }

    /** Seconds lost against the reference in what can be judged. */
    static double lost(JsonNode boat) {
        return CauseLoss.of(boat).stream()
                .filter(loss -> !loss.cause().equals("unjudged"))
                .mapToDouble(CauseLoss::loss)
                .sum();
    }

    /** A number, or a dash for none. */
    static String number(String format, JsonNode value) {
        return value.isNumber() ? number(format, value.asDouble()) : NONE;
    }

    static String number(String format, double value) {
        if (Double.isNaN(value)) {
            return NONE;
        }
        String text = String.format(Locale.ROOT, format, value);
        return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
    }
}
