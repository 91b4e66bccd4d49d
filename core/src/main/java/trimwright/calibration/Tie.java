package trimwright.calibration;

import java.util.List;

/**
 * Two unknowns whose estimates run together.
 *
 * @param correlation of the estimates (-)
 * @param parted whether both are told all the same
 * @param remedy what would part them
 */
public record Tie(Unknown one, Unknown other, double correlation, boolean parted, Remedy remedy) {
    /** Correlations from here on are named (chosen). */
    static final double NAMED = 0.7;

    /** What would part two unknowns. */
    public enum Remedy {
        /** A dock check on the same day: a wing set free shows the sensor, pins show the wing. */
        DOCK_CHECK,
        /** Both tacks at two wind angles: up and down the wind. */
        TWO_WIND_ANGLES,
        /** Course over ground logged beside the heading, on both tacks. */
        COURSE_OVER_GROUND,
        /** Speed through the water and over ground on opposite headings. */
        OPPOSITE_HEADINGS,
        /** Longer stretches on both tacks. */
        MORE_OF_BOTH_TACKS
    }

    static Remedy remedy(List<Unknown> unknowns, boolean hasCourse) {
        if (unknowns.stream().anyMatch(Tie::isWing)) {
            return Remedy.DOCK_CHECK;
        }
        if (unknowns.contains(Unknown.BOAT_SPEED)) {
            return Remedy.OPPOSITE_HEADINGS;
        }
        if (unknowns.contains(Unknown.COMPASS) || unknowns.contains(Unknown.LEEWAY)) {
            return hasCourse ? Remedy.MORE_OF_BOTH_TACKS : Remedy.COURSE_OVER_GROUND;
        }
        return Remedy.TWO_WIND_ANGLES;
    }

    private static boolean isWing(Unknown unknown) {
        return unknown.compareTo(Unknown.CAMBER) >= 0;
    }
}
