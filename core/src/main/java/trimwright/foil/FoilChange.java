package trimwright.foil;

/** First-order change of a {@link FoilLoad}, per unit of whatever changes; all zero where nothing does. */
public final class FoilChange {
    private double forceX;
    private double forceY;
    private double forceZ;
    private double pointZ;
    private double lift;
    private double liftCoefficient;
    private double stallRatio;
    private double cavitationRatio;
    private double ventilationRatio;

    /** Of the force along body x (N). */
    public double forceX() {
        return forceX;
    }

    /** Of the force along body y (N). */
    public double forceY() {
        return forceY;
    }

    /** Of the force along body z (N). */
    public double forceZ() {
        return forceZ;
    }

    /** Of the depth of the point where it acts, below the bottom of the hulls (m); the point moves no other way. */
    public double pointZ() {
        return pointZ;
    }

    /** Of the lift (N). */
    public double lift() {
        return lift;
    }

    double liftCoefficient() {
        return liftCoefficient;
    }

    public double stallRatio() {
        return stallRatio;
    }

    public double cavitationRatio() {
        return cavitationRatio;
    }

    public double ventilationRatio() {
        return ventilationRatio;
    }

    void setForce(double x, double y, double z) {
        forceX = x;
        forceY = y;
        forceZ = z;
    }

    void setPoint(double z) {
        pointZ = z;
    }

    void setLoads(double newLift, double newLiftCoefficient) {
        lift = newLift;
        liftCoefficient = newLiftCoefficient;
    }

    void setUse(double stall, double cavitation, double ventilation) {
        stallRatio = stall;
        cavitationRatio = cavitation;
        ventilationRatio = ventilation;
    }

    /** As {@link FoilLoad#turn}, of a load already turned, whose angle changes by {@code byAngle} too. */
    void turn(double cos, double sin, double byAngle, FoilLoad turned) {
        double x = forceX;
        double y = forceY;
        forceX = x * cos - y * sin - turned.forceY() * byAngle;
        forceY = x * sin + y * cos + turned.forceX() * byAngle;
    }
}
