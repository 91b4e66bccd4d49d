package trimwright.foil;

/**
 * When a surface-piercing strut draws air down its low-pressure side. Semi-empirical inception after Breslin and Skalak,
 * as an open hydrofoil code states it; the flow is bistable, so this marks a risk, not an instant.
 */
public final class Ventilation {
    private Ventilation() {}

    /**
     * Lift coefficient at inception (-).
     *
     * @param vapourNumber pressure of the air above the vapour pressure over dynamic pressure (-)
     * @param depthFroude speed over the root of g times the strut's wetted length (-)
     */
    public static double inceptionLift(double vapourNumber, double depthFroude) {
        return (1 - StrictMath.exp(-vapourNumber * depthFroude)) / Math.sqrt(depthFroude);
    }

    /** Change of {@link #inceptionLift} with changes of both. */
    static double inceptionLiftChange(double vapourNumber, double depthFroude, double byVapour, double byFroude) {
        double left = StrictMath.exp(-vapourNumber * depthFroude);
        double root = Math.sqrt(depthFroude);
        return left * (depthFroude * byVapour + vapourNumber * byFroude) / root
                - (1 - left) / root * 0.5 * byFroude / depthFroude;
    }
}
