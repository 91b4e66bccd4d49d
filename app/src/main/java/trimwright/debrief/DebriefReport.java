package trimwright.debrief;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.course.Course;
import trimwright.fleet.FleetFindings;
import trimwright.wind.SessionClock;

/**
 * All boats of a session on one clock, in the order given.
 *
 * @param course that they sailed, or null where it is not known
 * @param fleet what each did otherwise than the others
 * @param theirs what the model says of trims that differ; empty without boat file and targets
 */
public record DebriefReport(
        SessionClock clock,
        @Nullable Course course,
        List<BoatDebrief> boats,
        FleetFindings fleet,
        List<TheirTrim> theirs) {
    public DebriefReport {
        boats = List.copyOf(boats);
        theirs = List.copyOf(theirs);
    }
}
