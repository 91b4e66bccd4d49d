package trimwright.foil;

/**
 * Lift and separated drag at any angle: linear, then held at a ceiling without falling, so that a solver's step past the
 * stall still points the right way; drag takes the loss.
 */
final class LiftCurve {
    /** Most lift coefficient of a foil (-), chosen: thin sections at some millions of Reynolds number, finite span. */
    private static final double LIFT_MAX = 1.1;

    /** Drag coefficient of a plate across the flow at an aspect ratio of about five (-), from memory. */
    private static final double PLATE_DRAG = 1.2;

    private LiftCurve() {}

    /** Most lift coefficient at that dynamic pressure (Pa): the stall's or the cavitating foil's, whichever is less. */
    static double ceiling(double dynamicPressure) {
        double stall = 1 / LIFT_MAX;
        double load = dynamicPressure / Cavitation.LOAD_CEILING;
        return 1 / rootOfEight(power8(stall) + power8(load));
    }

    /** Share of the asked lift that is given (-), 1 when the ratio of asked lift to ceiling is small. */
    static double given(double ratio) {
        return 1 / rootOfEight(1 + power8(ratio));
    }

    /** Slope of {@link #ceiling} over the dynamic pressure (1/Pa). */
    static double ceilingSlope(double dynamicPressure) {
        double stall = 1 / LIFT_MAX;
        double load = dynamicPressure / Cavitation.LOAD_CEILING;
        double sum = power8(stall) + power8(load);
        double l2 = load * load;
        return -l2 * l2 * l2 * load / (sum * rootOfEight(sum) * Cavitation.LOAD_CEILING);
    }

    /** Slope of {@link #given} over the ratio (-). */
    static double givenSlope(double ratio) {
        double r2 = ratio * ratio;
        double sum = 1 + power8(ratio);
        return -r2 * r2 * r2 * ratio / (sum * rootOfEight(sum));
    }

    /** Change of {@link #separatedDrag} with changes of both. */
    static double separatedDragChange(double sine, double given, double bySine, double byGiven) {
        return PLATE_DRAG * sine * (2 * bySine * (1 - given) - sine * byGiven);
    }

    /** Drag coefficient of separated flow (-). */
    static double separatedDrag(double sine, double given) {
        return PLATE_DRAG * sine * sine * (1 - given);
    }

    private static double power8(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        return x4 * x4;
    }

    private static double rootOfEight(double x) {
        return Math.sqrt(Math.sqrt(Math.sqrt(x)));
    }
}
