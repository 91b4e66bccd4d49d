package trimwright.foil;

import trimwright.water.FrictionLine;

/** Drag of struts and foils that is not induced: profile, spray, junction. Sources: docs/theory/foil.md. */
public final class SectionDrag {
    /** Growth of profile drag with lift away from the design lift (-); 0.005 to 0.01 from memory, middle chosen. */
    private static final double LIFT_DEPENDENCE = 0.0075;

    private SectionDrag() {}

    /** Profile drag of both faces over their friction (-), thickness over chord (-); Torenbeek. */
    public static double formFactor(double thicknessRatio) {
        double t2 = thicknessRatio * thicknessRatio;
        return 1 + 2.7 * thicknessRatio + 100 * t2 * t2;
    }

    /**
     * Profile drag coefficient on planform (-).
     *
     * @param re Reynolds number on the chord (-)
     * @param offDesign lift coefficient less the one that the section is made for (-)
     */
    public static double profile(double re, double thicknessRatio, double offDesign) {
        return 2 * FrictionLine.coefficient(re) * formFactor(thicknessRatio) + LIFT_DEPENDENCE * offDesign * offDesign;
    }

    /** Change of {@link #profile} with changes of the Reynolds number and of the lift coefficient. */
    static double profileChange(double re, double thicknessRatio, double offDesign, double byRe, double byLift) {
        return 2 * FrictionLine.slope(re) * formFactor(thicknessRatio) * byRe
                + 2 * LIFT_DEPENDENCE * offDesign * byLift;
    }

    /** Spray drag of one piercing over dynamic pressure (m2), thickness at the waterline (m); Hoerner ch. 10. */
    public static double sprayArea(double thickness) {
        return 0.24 * thickness * thickness;
    }

    /** Drag of one joint over dynamic pressure (m2), mean thickness ratio (-) and thickness (m); Hoerner ch. 8. */
    public static double junctionArea(double meanThicknessRatio, double meanThickness) {
        double coefficient = 17 * meanThicknessRatio * meanThicknessRatio - 0.05;
        return Math.max(0, coefficient) * meanThickness * meanThickness;
    }
}
