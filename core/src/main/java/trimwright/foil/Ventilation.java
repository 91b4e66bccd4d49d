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
}
