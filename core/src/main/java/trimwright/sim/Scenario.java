package trimwright.sim;

import java.util.List;
import trimwright.crew.Turning;
import trimwright.weather.WeatherSpec;

/**
 * All that a simulated day is made from, beside boat, aims and course. Same scenario, same day.
 *
 * @param seed of wind and noise
 * @param weather the wind
 * @param wakes whether boats feel each other's wakes
 * @param turning how tacks and gybes are made
 * @param entries the boats
 */
public record Scenario(long seed, WeatherSpec weather, Wakes wakes, Turning turning, List<Entry> entries) {
    public Scenario {
        entries = List.copyOf(entries);
        if (entries.isEmpty()) {
            throw new IllegalArgumentException("a day needs a boat");
        }
        if (entries.stream().map(Entry::name).distinct().count() != entries.size()) {
            throw new IllegalArgumentException("two boats of one name");
        }
    }

    /** A day on which turns are sailed. */
    public Scenario(long seed, WeatherSpec weather, Wakes wakes, List<Entry> entries) {
        this(seed, weather, wakes, Turning.SAILED, entries);
    }

    /** Whether wings disturb the wind of others. */
    public enum Wakes {
        FELT,
        NONE
    }
}
