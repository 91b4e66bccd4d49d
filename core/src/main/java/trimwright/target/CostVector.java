package trimwright.target;

import java.util.EnumMap;
import java.util.Map;

/** The costs of a target as part of the row of {@link TargetVector}. */
final class CostVector {
    private static final int OF_CONTROL = 9;
    private static final TargetLimit[] LIMITS = TargetLimit.values();

    static final int SIZE = 3 * OF_CONTROL + LIMITS.length;

    private CostVector() {}

    static void put(TrimCosts costs, double[] row, int first) {
        put(costs.camber(), row, first);
        put(costs.twist(), row, first + OF_CONTROL);
        put(costs.sheet(), row, first + 2 * OF_CONTROL);
        for (TargetLimit limit : LIMITS) {
            row[first + 3 * OF_CONTROL + limit.ordinal()] = costs.easing(limit);
        }
    }

    private static void put(ControlCost cost, double[] row, int first) {
        row[first] = cost.offByOne();
        row[first + 1] = cost.tenth().low();
        row[first + 2] = cost.tenth().high();
        row[first + 3] = cost.threeTenths().low();
        row[first + 4] = cost.threeTenths().high();
        row[first + 5] = cost.aloneTenth();
        row[first + 6] = cost.aloneThreeTenths();
        row[first + 7] = cost.flatTop();
        row[first + 8] = cost.together();
    }

    static TrimCosts at(double[] row, int first) {
        Map<TargetLimit, Double> easing = new EnumMap<>(TargetLimit.class);
        for (TargetLimit limit : LIMITS) {
            double gain = row[first + 3 * OF_CONTROL + limit.ordinal()];
            if (gain != 0) {
                easing.put(limit, gain);
            }
        }
        return new TrimCosts(
                control(row, first), control(row, first + OF_CONTROL), control(row, first + 2 * OF_CONTROL), easing);
    }

    private static ControlCost control(double[] row, int first) {
        return new ControlCost(
                row[first],
                TargetVector.band(row[first + 1], row[first + 2]),
                TargetVector.band(row[first + 3], row[first + 4]),
                row[first + 5],
                row[first + 6],
                row[first + 7],
                row[first + 8]);
    }
}
