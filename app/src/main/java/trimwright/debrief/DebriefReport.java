package trimwright.debrief;

import java.util.List;
import trimwright.wind.SessionClock;

/** All boats of a session on one clock, in the order given. */
public record DebriefReport(SessionClock clock, List<BoatDebrief> boats) {
    public DebriefReport {
        boats = List.copyOf(boats);
    }
}
