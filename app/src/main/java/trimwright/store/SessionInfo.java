package trimwright.store;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a library says of one session: one stretch of time, one or several boats.
 *
 * @param id {@code YYYY-MM-DD-slug[-n]}, also the folder's name
 * @param start first sample (UTC)
 * @param end last sample (UTC)
 * @param offset of the time of day on board
 * @param boats in order of name
 * @param sources the files that it was read from, in the order of import
 */
public record SessionInfo(
        String id, Instant start, Instant end, UtcOffset offset, List<BoatInfo> boats, List<SourceInfo> sources) {
    public SessionInfo {
        boats = List.copyOf(boats);
        sources = List.copyOf(sources);
    }

    /** The boat of that name, upper or lower case, or null. */
    public @Nullable BoatInfo findBoat(String boat) {
        return boats.stream()
                .filter(candidate -> candidate.boat().equalsIgnoreCase(boat))
                .findFirst()
                .orElse(null);
    }
}
