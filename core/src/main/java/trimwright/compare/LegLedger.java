package trimwright.compare;

import java.util.List;
import trimwright.segment.Leg;

/**
 * Seconds lost on one leg and what they were lost to. The lines add up to the total; a gain is a negative loss.
 *
 * @param total (s)
 */
public record LegLedger(Leg leg, double total, List<Line> lines) {
    public LegLedger {
        lines = List.copyOf(lines);
    }

    /** @param loss (s), negative for a gain */
    public record Line(Cause cause, double loss) {}
}
