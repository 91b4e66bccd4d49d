package trimwright.prepare;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Computed flow at one angle of attack. Coefficients are per dynamic pressure and the request's chord; NaN where there
 * is none.
 *
 * @param alpha angle of attack (rad)
 * @param lift coefficient (-)
 * @param drag coefficient (-), NaN in an ideal fluid
 * @param moment about a quarter of that chord behind the first element's nose (-), positive nose up
 * @param elements by element; none past the stall of the layers, where the row goes over to a separated plate
 * @param reason why there is no answer, null where there is one
 */
public record FlowRow(
        double alpha,
        double lift,
        double drag,
        double moment,
        List<Element> elements,
        @Nullable String reason) {
    /**
     * One element.
     *
     * @param lift its share of the lift coefficient (-)
     * @param pressureRise from least pressure to the trailing edge, as coefficients (-)
     * @param upperTransition where the upper layer becomes turbulent aft of the element's nose over its own chord (-), 1:
     *     laminar to the end; NaN in an ideal fluid
     * @param lowerTransition the same of the lower layer
     * @param upperSeparation where the upper turbulent layer leaves the surface (-), 1: nowhere
     * @param lowerSeparation the same of the lower layer
     */
    public record Element(
            double lift,
            double pressureRise,
            double upperTransition,
            double lowerTransition,
            double upperSeparation,
            double lowerSeparation) {}

    public FlowRow {
        elements = List.copyOf(elements);
    }

    /** Whether the answer is not the layers' but goes over to a separated plate. */
    public boolean isPastStall() {
        return isSolved() && elements.isEmpty();
    }

    public boolean isSolved() {
        return reason == null;
    }
}
