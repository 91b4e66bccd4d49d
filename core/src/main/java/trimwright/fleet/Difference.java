package trimwright.fleet;

import org.jspecify.annotations.Nullable;
import trimwright.segment.PointOfSail;

/**
 * What one boat did otherwise than the mean of the others.
 *
 * @param boat its name
 * @param on point of sail
 * @param question what is compared
 * @param value of the boat less the mean of the others, in the question's unit
 * @param low lower end of the interval that holds the truth in 95 of 100 cases
 * @param high its upper end
 * @param error standard error, in the same unit
 * @param chance how often chance alone makes a difference as large (-), both ways
 * @param isTold whether it stands among all that was asked (Benjamini and Hochberg, 5 %)
 * @param evidence how much data it rests on
 */
public record Difference(
        String boat,
        PointOfSail on,
        Question question,
        double value,
        double low,
        double high,
        double error,
        double chance,
        boolean isTold,
        Evidence evidence) {
    /**
     * Data behind a difference.
     *
     * @param seconds in which the boat was compared with others (s); for turns their number
     * @param blocks independent stretches that it is worth (-)
     * @param lowWind least wind in them (m/s), null where not known
     * @param highWind most wind in them (m/s), null where not known
     * @param from instant of the session clock at which the longest stretch begins, -1 where there is none
     * @param to instant at which it ends
     */
    public record Evidence(
            double seconds,
            double blocks,
            @Nullable Double lowWind,
            @Nullable Double highWind,
            int from,
            int to) {}

    Difference told(boolean told) {
        return new Difference(boat, on, question, value, low, high, error, chance, told, evidence);
    }
}
