package trimwright.hull;

import trimwright.boat.Hulls;
import trimwright.units.Units;
import trimwright.water.WaterState;

/**
 * How much water one hull displaces. Volume grows with a power of the draft that follows from block and waterplane
 * coefficient; no lines plan is needed. Leaves out flare, freeboard and the change of length with draft.
 */
final class HullShape {
    /** Waterplane area over length times beam (-), chosen: slender round-bilge hulls lie about there. */
    private static final double WATERPLANE = 0.72;

    /** Radius of gyration of the waterplane over length (-), chosen: a full rectangle has 0.289. */
    private static final double GYRATION = 0.23;

    /** Least power (-), chosen: a box-like hull, too, must meet the water without a step in stiffness. */
    private static final double POWER_MIN = 1.2;

    private final double weightAtDraft;
    private final double draft;
    private final double power;
    private final double gyration2;
    private final double waterWeight;
    private final double length;

    HullShape(Hulls hulls, WaterState water) {
        double volume = hulls.blockCoefficient() * hulls.waterlineLength() * hulls.beam() * hulls.draft();
        waterWeight = water.density() * Units.G;
        weightAtDraft = waterWeight * volume;
        draft = hulls.draft();
        length = hulls.waterlineLength();
        power = Math.max(POWER_MIN, WATERPLANE / hulls.blockCoefficient());
        gyration2 = square(GYRATION * hulls.waterlineLength());
    }

    /** Buoyancy (N) with the keel that far (m) below the surface; nothing when above. */
    double buoyancy(double immersion) {
        double wet = Math.max(immersion, 0);
        return weightAtDraft * StrictMath.pow(wet / draft, power);
    }

    /** Slope of {@link #buoyancy} over the immersion (N/m). */
    double buoyancySlope(double immersion) {
        double wet = Math.max(immersion, 0);
        return power / draft * weightAtDraft * StrictMath.pow(wet / draft, power - 1);
    }

    /** Depth of the keel (m) that carries that weight (N); 0 for none. */
    double immersion(double carried) {
        return draft * StrictMath.pow(Math.max(carried, 0) / weightAtDraft, 1 / power);
    }

    /** Moment that trims back over angle (N m/rad), with the keel that far (m) below the surface. */
    double pitchStiffness(double immersion) {
        return buoyancySlope(immersion) * gyration2;
    }

    /** Displaced volume (m3) that carries that weight (N). */
    double volume(double carried) {
        return carried / waterWeight;
    }

    double length() {
        return length;
    }

    private static double square(double a) {
        return a * a;
    }
}
