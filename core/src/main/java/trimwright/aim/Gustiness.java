package trimwright.aim;

import org.jspecify.annotations.Nullable;
import trimwright.boat.Limits;

/**
 * How gusty the day is and how seldom a limit may be passed.
 *
 * @param turbulence standard deviation of the wind over its mean (-), above 0
 * @param chancePerMinute largest chance that in a minute of sailing a gust passes a limit (-), in (0, 1)
 */
public record Gustiness(double turbulence, double chancePerMinute) {
    /**
     * Turbulence where nothing is said (-), of all that the program computes for a day to come: middle of the 6 to 10 per cent over
     * open water that are common practice, no source (decision 0105).
     */
    public static final double TURBULENCE = 0.08;

    /** Least and most that a person may say (-); chosen: a share of 0.08 typed for 8 per cent is below, a squall above. */
    public static final double LEAST_TURBULENCE = 0.005;

    public static final double MOST_TURBULENCE = 0.3;

    /** Chance a minute where the boat file says nothing (-); chosen: one race of half an hour in twelve. */
    public static final double CHANCE_PER_MINUTE = 0.003;

    public Gustiness {
        if (!(turbulence > 0) || !(chancePerMinute > 0 && chancePerMinute < 1)) {
            throw new IllegalArgumentException(
                    "no gustiness: turbulence " + turbulence + ", chance a minute " + chancePerMinute);
        }
    }

    /** That turbulence with the chance that a boat file allows. */
    public static Gustiness of(double turbulence, Limits limits) {
        @Nullable Double own = limits.gustChancePerMinute();
        return new Gustiness(turbulence, own == null ? CHANCE_PER_MINUTE : own);
    }

    /** How often a limit may be passed (1/s): passings are rare and independent, so their number is Poisson's. */
    public double rate() {
        return -StrictMath.log(1 - chancePerMinute) / 60;
    }
}
