package trimwright.debrief;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.course.Course;
import trimwright.fleet.FleetFindings;
import trimwright.plans.KeptPlan;
import trimwright.wind.SessionClock;

/**
 * All boats of a session on one clock, in the order given.
 *
 * @param course that they sailed, or null where it is not known
 * @param fleet what each did otherwise than the others
 * @param theirs what the model says of trims that differ; empty without boat file and targets
 * @param plans that turns are held against
 */
public record DebriefReport(
        SessionClock clock,
        @Nullable Course course,
        List<BoatDebrief> boats,
        FleetFindings fleet,
        List<TheirTrim> theirs,
        List<KeptPlan> plans) {
    public DebriefReport {
        boats = List.copyOf(boats);
        theirs = List.copyOf(theirs);
        plans = List.copyOf(plans);
    }

    /** With turns held against those plans. */
    public DebriefReport with(List<KeptPlan> kept) {
        return new DebriefReport(clock, course, boats, fleet, theirs, kept);
    }
}
