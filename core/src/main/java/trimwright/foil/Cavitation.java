package trimwright.foil;

/**
 * Suction of a section, and what it costs when the water boils. The suction is that of an ideal section at the lift for
 * which it is made: elliptic thickness and an even load along the chord. Real sections lie above it, most of all far from
 * their design lift; this is the model's one free choice about cavitation (docs/theory/foil.md).
 */
public final class Cavitation {
    /**
     * Most lift per area that a fully cavitating foil carried (Pa): 2200 lb/ft2, Benson and Land, NACA tank report.
     */
    public static final double LOAD_CEILING = 105_300;

    /**
     * Drag coefficient over the square of the unmet suction (-), chosen: without any pressure to spare a section that
     * asks for 0.35 then has the drag of a supercavitating plate at the same lift, about 0.025.
     */
    private static final double DRAG_GROWTH = 0.2;

    private Cavitation() {}

    /** Largest suction over dynamic pressure, -Cp_min (-), thickness ratio (-) and lift coefficient of either sign (-). */
    public static double suction(double thicknessRatio, double liftCoefficient) {
        double speedRatio = 1 + thicknessRatio + 0.25 * Math.abs(liftCoefficient);
        return speedRatio * speedRatio - 1;
    }

    /** Slope of {@link #suction} over the size of the lift coefficient (-). */
    static double suctionSlope(double thicknessRatio, double liftCoefficient) {
        return 0.5 * (1 + thicknessRatio + 0.25 * Math.abs(liftCoefficient));
    }

    /** Change of {@link #addedDrag} with changes of suction and ratio. */
    static double addedDragChange(double suction, double ratio, double bySuction, double byRatio) {
        if (ratio <= 1) {
            return 0;
        }
        double share = 1 - 1 / ratio;
        return 2 * DRAG_GROWTH * suction * share * (share * bySuction + suction * byRatio / (ratio * ratio));
    }

    /** Drag coefficient on planform that is added (-), for that suction (-) and its ratio to the cavitation number (-). */
    static double addedDrag(double suction, double ratio) {
        if (ratio <= 1) {
            return 0;
        }
        double unmet = suction * (1 - 1 / ratio);
        return DRAG_GROWTH * unmet * unmet;
    }
}
