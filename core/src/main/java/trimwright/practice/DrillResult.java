package trimwright.practice;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a hand made of a drill.
 *
 * @param seconds that counted (s): the drill's length, or until it ended before
 * @param lost to the card's progress (s): sum of one less the share of it that was made; after a capsize all that was left
 * @param end how it ended
 * @param meanWind (m/s)
 * @param meanSpeed through the water (m/s)
 * @param mostHeel largest heel to leeward (rad)
 * @param touched time with a hull in the water (s)
 * @param slid time with air on a shaft or rudder (s)
 * @param over time past each limit
 * @param turns each turn that was ordered
 * @param started how the start was made, null in other drills and before the gun
 */
public record DrillResult(
        double seconds,
        double lost,
        End end,
        double meanWind,
        double meanSpeed,
        double mostHeel,
        double touched,
        double slid,
        OverLimits over,
        List<Turned> turns,
        @Nullable Started started) {
    public DrillResult {
        turns = List.copyOf(turns);
    }

    /**
     * A start.
     *
     * @param late time of crossing the line after the gun (s), negative before it; NaN where she did not cross
     * @param metres to the line at the gun, negative beyond it
     * @param speed through the water at the gun (m/s)
     */
    public record Started(double late, double metres, double speed) {}

    /** How a run ends. */
    public enum End {
        /** It went its length, or was stopped before. */
        SAILED,
        /** She heeled so far that nobody could have held her: what was left of the drill is lost. */
        CAPSIZED,
        /** Her bows went under and she tripped over them: what was left of the drill is lost. */
        NOSE_DIVED
    }

    /**
     * Time past limits (s).
     *
     * @param elevator down-force of the windward elevator beyond the boat file's limit, by a twentieth or more
     * @param sheet load at the wing beyond the largest that maker or class allows, by a twentieth or more
     * @param stall part of the wing stalled
     */
    public record OverLimits(double elevator, double sheet, double stall) {}

    /**
     * A turn.
     *
     * @param word time of the driver's word since the drill began (s)
     * @param metres progress lost from the word until 20 s after it (m)
     * @param leastSpeed in that time (m/s)
     * @param touched whether a hull touched the water in that time
     */
    public record Turned(double word, double metres, double leastSpeed, boolean touched) {}
}
