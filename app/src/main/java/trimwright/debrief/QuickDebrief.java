package trimwright.debrief;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/**
 * What a crew can take in between two races: six lines of one boat's day, from the whole debrief's document, so that neither says
 * anything the other does not.
 */
public final class QuickDebrief {
    /** A channel is named below this share of its time: as in the whole debrief. */
    private static final double WELL_COVERED = 0.98;

    /** Channels that are named at most, and causes: what a person takes in; chosen. */
    private static final int NAMED = 3;

    private static final int CAUSES = 2;

    private QuickDebrief() {}

    /** What a line is about. */
    public enum Subject {
        START,
        FOILS,
        TURNS,
        LOST,
        OTHERS,
        SENSORS
    }

    /**
     * One line.
     *
     * @param start where to look at it, from the session's begin (s), null where there is no one moment
     * @param duration (s)
     */
    public record Line(
            Subject subject, String sentence, @Nullable Double start, double duration) {}

    /**
     * The six lines.
     *
     * @param debrief a {@code debrief/1}
     * @param own name of the boat
     * @throws UserInputException where the session has no such boat
     */
    public static List<Line> of(JsonNode debrief, String own) {
        JsonNode boat = boat(debrief, own);
        return List.of(
                start(boat), foils(boat), turns(boat), lost(boat), others(debrief.path("fleet"), own), sensors(boat));
    }

    static JsonNode boat(JsonNode debrief, String own) {
        List<String> names = new ArrayList<>();
        for (JsonNode boat : debrief.path("boats")) {
            if (boat.path("boat").asText().equals(own)) {
                return boat;
            }
            names.add(boat.path("boat").asText());
        }
        throw new UserInputException(Texts.of("quick.no_boat", own, String.join(", ", names)));
    }

    private static Line start(JsonNode boat) {
        JsonNode start = boat.path("start");
        if (!start.path("crossed_s").isNumber()) {
            return new Line(Subject.START, Texts.of("quick.start.none"), null, 0);
        }
        boolean early = start.path("early").asBoolean();
        double share = start.path("target_ratio").asDouble(Double.NaN);
        String speed = Double.isNaN(share)
                ? Texts.of("quick.start.speed", start.path("speed_kn").asDouble())
                : Texts.of("quick.start.speed_share", start.path("speed_kn").asDouble(), 100 * share);
        String sentence = Texts.of(
                early ? "quick.start.early" : "quick.start.late",
                start.path("crossed_s").asDouble(),
                Math.abs(start.path("distance_m").asDouble()),
                speed);
        return new Line(Subject.START, sentence, start.path("gun_s").asDouble(), 30);
    }

    private static Line foils(JsonNode boat) {
        // Null where neither ride height nor speed tells it: then no spell is listed, which is not the same as none off
        // the foils.
        if (!boat.path("foiling_told_by").isTextual()) {
            return new Line(Subject.FOILS, Texts.of("quick.foils.not_told"), null, 0);
        }
        FoilTime time = FoilTime.of(boat);
        if (time.sailed() == 0) {
            return new Line(Subject.FOILS, Texts.of("quick.foils.no_leg"), null, 0);
        }
        JsonNode longest = time.longest();
        double share = 100 * time.share();
        return longest == null
                ? new Line(Subject.FOILS, Texts.of("quick.foils.all"), null, 0)
                : at(
                        Subject.FOILS,
                        Texts.of(
                                "quick.foils", share, longest.path("duration_s").asDouble()),
                        longest);
    }

    private static Line turns(JsonNode boat) {
        int dry = 0;
        int wet = 0;
        JsonNode worst = null;
        Set<String> crossing = Set.of("tack", "gybe");
        for (JsonNode turn : boat.path("turns")) {
            if (!crossing.contains(turn.path("kind").asText())) {
                continue;
            }
            wet += turn.path("touched_down").asBoolean() ? 1 : 0;
            dry += turn.path("touched_down").isBoolean()
                            && !turn.path("touched_down").asBoolean()
                    ? 1
                    : 0;
            boolean dearer = turn.path("lost_m").isNumber()
                    && (worst == null
                            || turn.path("lost_m").asDouble()
                                    > worst.path("lost_m").asDouble());
            worst = dearer ? turn : worst;
        }
        String counted = dry + wet == 0 ? Texts.of("quick.turns.none") : Texts.of("quick.turns", dry, wet);
        if (worst == null) {
            return new Line(Subject.TURNS, counted, null, 0);
        }
        String dearest = Texts.of(
                "quick.turns.worst",
                Texts.of("debrief.kind." + worst.path("kind").asText()),
                worst.path("lost_m").asDouble());
        return at(Subject.TURNS, counted + " " + dearest, worst);
    }

    private static Line lost(JsonNode boat) {
        List<CauseLoss> losses = CauseLoss.of(boat).stream()
                .filter(CauseLoss::isTold)
                .sorted(Comparator.comparingDouble(CauseLoss::loss).reversed())
                .limit(CAUSES)
                .toList();
        if (losses.isEmpty()) {
            return new Line(Subject.LOST, Texts.of("quick.lost.none"), null, 0);
        }
        String said = losses.stream()
                .map(one -> Texts.of(
                        "quick.lost.one",
                        Texts.of("debrief.cause." + one.cause()),
                        half(one.loss()),
                        half(one.error())))
                .collect(Collectors.joining("; "));
        JsonNode piece = losses.get(0).worst();
        String sentence = Texts.of("quick.lost", said);
        return piece == null ? new Line(Subject.LOST, sentence, null, 0) : at(Subject.LOST, sentence, piece);
    }

    /** In half-second steps, as seconds are shown. */
    private static double half(double seconds) {
        return Math.rint(2 * seconds) / 2;
    }

    /** What the boat did otherwise that made good most more than the others; of boats that made good less, nothing is to be learnt. */
    private static Line others(JsonNode fleet, String own) {
        JsonNode best = null;
        double most = 0;
        for (JsonNode finding : fleet.path("findings")) {
            double more = progress(fleet, finding);
            if (!finding.path("boat").asText().equals(own) && more > most) {
                best = finding;
                most = more;
            }
        }
        if (best == null) {
            return new Line(Subject.OTHERS, Texts.of("quick.others.none"), null, 0);
        }
        String sentence = best.path("sentence").asText();
        return best.path("start_s").isNumber()
                ? at(Subject.OTHERS, sentence, best)
                : new Line(Subject.OTHERS, sentence, null, 0);
    }

    /** By how much a finding's boat made good more than the others there (kn), 0 where that was not asked. */
    private static double progress(JsonNode fleet, JsonNode finding) {
        for (JsonNode difference : fleet.path("differences")) {
            if (difference.path("question").asText().equals("progress")
                    && difference.path("boat").equals(finding.path("boat"))
                    && difference.path("kind").equals(finding.path("kind"))) {
                return difference.path("value_kn").asDouble();
            }
        }
        return 0;
    }

    private static Line sensors(JsonNode boat) {
        Set<String> doubtful = new TreeSet<>();
        for (JsonNode channel : boat.path("quality").path("channels")) {
            long marked = channel.path("frozen").asLong()
                    + channel.path("jump").asLong()
                    + channel.path("out_of_range").asLong();
            if (channel.path("coverage_ratio").asDouble() < WELL_COVERED
                    || marked > (1 - WELL_COVERED) * channel.path("samples").asDouble()) {
                doubtful.add(channel.path("channel").asText());
            }
        }
        if (doubtful.isEmpty()) {
            return new Line(Subject.SENSORS, Texts.of("quick.sensors.well"), null, 0);
        }
        String named = doubtful.stream().limit(NAMED).collect(Collectors.joining(", "));
        int more = doubtful.size() - NAMED;
        return new Line(
                Subject.SENSORS,
                Texts.of("quick.sensors", named) + (more > 0 ? " " + Texts.of("quick.sensors.more", more) : ""),
                null,
                0);
    }

    private static Line at(Subject subject, String sentence, JsonNode span) {
        return new Line(
                subject,
                sentence,
                span.path("start_s").asDouble(),
                span.path("duration_s").asDouble());
    }

    /** A subject as keys have it. */
    public static String word(Subject subject) {
        return subject.name().toLowerCase(Locale.ROOT);
    }
}
