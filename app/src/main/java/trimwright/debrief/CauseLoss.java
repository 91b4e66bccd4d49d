package trimwright.debrief;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What one cause took of a boat's legs.
 *
 * @param cause as in {@code debrief/1}
 * @param loss of all legs (s), negative for a gain
 * @param error half of the interval that the line is told with (s)
 * @param minutes of the legs
 * @param worst piece of time that lost most, null where none lost
 */
public record CauseLoss(
        String cause,
        double loss,
        double error,
        double minutes,
        @Nullable JsonNode worst) {
    /**
     * How near a leg's line comes to what its cause truly took: 15 per cent or two seconds, from runs of simulated days with and
     * without the cause (docs/validation.md, "Time ledger"); single legs miss that at times.
     */
    private static final double SHARE = 0.15;

    private static final double SECONDS = 2;

    /** What nobody can change, or nothing is known about. */
    private static final Set<String> NOT_TOLD = Set.of("unjudged", "remaining");

    /** All causes that a ledger of the boat has. */
    public static List<CauseLoss> of(JsonNode boat) {
        Map<String, Sum> sums = new LinkedHashMap<>();
        double minutes = 0;
        for (JsonNode leg : boat.path("legs")) {
            minutes += leg.path("duration_s").asDouble() / 60;
        }
        for (JsonNode leg : boat.path("ledger")) {
            for (JsonNode line : leg.path("lines")) {
                sums.computeIfAbsent(line.path("cause").asText(), cause -> new Sum())
                        .add(line);
            }
        }
        List<CauseLoss> losses = new ArrayList<>();
        for (Map.Entry<String, Sum> entry : sums.entrySet()) {
            Sum sum = entry.getValue();
            double error = Math.max(SHARE * Math.abs(sum.loss), SECONDS * Math.sqrt(sum.legs));
            losses.add(new CauseLoss(entry.getKey(), sum.loss, error + sum.orders / 2, minutes, sum.worst));
        }
        return losses;
    }

    /** Whether it is larger than its interval, and one to speak of. */
    public boolean isTold() {
        return loss > error && !NOT_TOLD.contains(cause);
    }

    private static final class Sum {
        private double loss;
        private double orders;
        private int legs;
        private @Nullable JsonNode worst;

        private void add(JsonNode line) {
            loss += line.path("loss_s").asDouble();
            orders += line.path("most_s").asDouble() - line.path("least_s").asDouble();
            legs++;
            for (JsonNode piece : line.path("pieces")) {
                double lost = piece.path("loss_s").asDouble();
                if (lost > (worst == null ? 0 : worst.path("loss_s").asDouble())) {
                    worst = piece;
                }
            }
        }
    }
}
