package trimwright.dockside;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.text.JsonOut;

/** What the last kept dock check of a boat said must be put right first. */
public final class DockStops {
    /** A check older than this says little of today's instruments: chosen. */
    private static final Duration FRESH = Duration.ofHours(24);

    private DockStops() {}

    /**
     * The lines in words, in the order of the check; empty where none stops, and where no check was kept in the day before.
     *
     * @param boat her name in the data
     * @param now a check of a session that begins later does not count
     */
    public static List<String> of(Library library, String boat, Instant now) {
        List<SessionInfo> sessions = library.sessions();
        for (int i = sessions.size() - 1; i >= 0; i--) {
            SessionInfo session = sessions.get(i);
            boolean counts = !session.start().isAfter(now) && !session.start().isBefore(now.minus(FRESH));
            @Nullable String check = counts ? library.dockChecks(session).findLast(boat) : null;
            if (check != null) {
                return stops(check);
            }
        }
        return List.of();
    }

    private static List<String> stops(String check) {
        List<String> stops = new ArrayList<>();
        try {
            for (JsonNode line : JsonOut.mapper().readTree(check).path("lines")) {
                if (line.path("verdict").asText().equals("stop")) {
                    stops.add(line.path("what").asText());
                }
            }
            return stops;
        } catch (JsonProcessingException e) {
            // Somebody's hand was in the file; the day afloat goes on without it.
            return List.of();
        }
    }
}
