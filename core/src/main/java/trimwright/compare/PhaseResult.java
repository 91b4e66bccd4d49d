package trimwright.compare;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.segment.Phase;

/**
 * A phase against the reference.
 *
 * @param made mean progress (m/s)
 * @param wanted mean progress of the reference over the same time (m/s), null where it says nothing
 * @param difference progress less that of the reference (m/s), with interval; null where it says nothing
 */
public record PhaseResult(
        Phase phase,
        double made,
        @Nullable Double wanted,
        @Nullable Interval difference,
        Set<CompareCaveat> caveats) {
    public PhaseResult {
        caveats = Set.copyOf(caveats);
    }
}
