package trimwright.target;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What being off with a control costs at a target, and what easing a limit would gain.
 *
 * @param camber as {@link ControlCost}, set anew with the sheet
 * @param twist the same
 * @param sheet set anew with the camber
 * @param easing gain of the speed that the target is best for (m/s) if a limit were one per cent wider, for those that bind
 */
public record TrimCosts(ControlCost camber, ControlCost twist, ControlCost sheet, Map<TargetLimit, Double> easing) {
    /** Nothing known: of targets that were not computed. */
    public static final TrimCosts NONE = new TrimCosts(ControlCost.NONE, ControlCost.NONE, ControlCost.NONE, Map.of());

    public TrimCosts {
        if (easing.isEmpty()) {
            easing = Map.of();
        } else {
            EnumMap<TargetLimit, Double> copy = new EnumMap<>(TargetLimit.class);
            copy.putAll(easing);
            easing = Collections.unmodifiableMap(copy);
        }
    }

    /** Gain (m/s) if a limit were one per cent wider; zero where it does not bind. */
    public double easing(TargetLimit limit) {
        return easing.getOrDefault(limit, 0.0);
    }

    /** Whether it is camber that must not move without the sheet, rather than twist: it costs more alone. */
    public boolean isCamberTheDearer() {
        return camber.offByOne() >= twist.offByOne();
    }
}
