package trimwright.foil;

/**
 * Force on one element and how near it is to its limits. A holder that the model fills, so that a solver can ask
 * millions of times without making garbage; only this package writes into it.
 */
public final class FoilLoad {
    private double forceX;
    private double forceY;
    private double forceZ;
    private double pointX;
    private double pointY;
    private double pointZ;
    private double lift;
    private double drag;
    private double liftCoefficient;
    private double stallRatio;
    private double cavitationRatio;
    private double ventilationRatio;

    /** Force along body x, forward (N). */
    public double forceX() {
        return forceX;
    }

    /** Force along body y, to starboard (N). */
    public double forceY() {
        return forceY;
    }

    /** Force along body z, down (N). */
    public double forceZ() {
        return forceZ;
    }

    /** Where the force acts: forward of the main foils' lift centre (m). */
    public double pointX() {
        return pointX;
    }

    /** Where the force acts: to starboard of the centreline (m). */
    public double pointY() {
        return pointY;
    }

    /** Where the force acts: below the bottom of the hulls (m). */
    public double pointZ() {
        return pointZ;
    }

    /** Force across the flow (N): up for a tip or an elevator, to starboard for a shaft. */
    public double lift() {
        return lift;
    }

    /** Force along the flow (N), never negative. */
    public double drag() {
        return drag;
    }

    /** Lift over dynamic pressure and wetted area (-), signed as {@link #lift()}. */
    public double liftCoefficient() {
        return liftCoefficient;
    }

    /** Lift that the incidence asks for over the most that the element can give (-); 1 is the stall or the load ceiling. */
    public double stallRatio() {
        return stallRatio;
    }

    /** Suction of the section over the suction at which the water boils (-); above 1 it cavitates. */
    public double cavitationRatio() {
        return cavitationRatio;
    }

    /** Lift coefficient over the one at which air is drawn down (-); 0 for an element that does not pierce the surface. */
    public double ventilationRatio() {
        return ventilationRatio;
    }

    void setForce(double x, double y, double z) {
        forceX = x;
        forceY = y;
        forceZ = z;
    }

    void setPoint(double x, double y, double z) {
        pointX = x;
        pointY = y;
        pointZ = z;
    }

    void setLoads(double newLift, double newDrag, double newLiftCoefficient) {
        lift = newLift;
        drag = newDrag;
        liftCoefficient = newLiftCoefficient;
    }

    void setUse(double stall, double cavitation, double ventilation) {
        stallRatio = stall;
        cavitationRatio = cavitation;
        ventilationRatio = ventilation;
    }

    /** Turns the force about body z from an assembly's axes back into the boat's; angle positive from x to y (rad). */
    void turn(double cos, double sin) {
        double x = forceX;
        double y = forceY;
        forceX = x * cos - y * sin;
        forceY = x * sin + y * cos;
    }
}
