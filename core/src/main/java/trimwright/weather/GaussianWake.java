package trimwright.weather;

/**
 * Loss of speed behind a body that holds back the air, bell-shaped across: Bastankhah and Porte-Agel, A new analytical model
 * for wind-turbine wakes, Renewable Energy 70 (2014) 116-123, equations 6, 7, 21 and 23; growth rate by Niayifar and
 * Porte-Agel, Energies 9 (2016) 741, eq. 15. Valid for the far wake; nearer, the radicand is held at zero.
 */
public final class GaussianWake {
    private GaussianWake() {}

    /**
     * Growth of the wake's width per metre run (-).
     *
     * @param intensity turbulence intensity of the wind (-)
     */
    public static double growth(double intensity) {
        return 0.3837 * intensity + 0.003678;
    }

    /**
     * Standard deviation of the bell (m).
     *
     * @param distance behind the body (m), not negative
     * @param diameter of the body, a disc (m)
     * @param thrust thrust coefficient of the disc (-), 0 to 0.95
     * @param growth see {@link #growth}
     */
    public static double width(double distance, double diameter, double thrust, double growth) {
        double root = Math.sqrt(1 - thrust);
        double beta = 0.5 * (1 + root) / root;
        return growth * distance + 0.2 * Math.sqrt(beta) * diameter;
    }

    /** Loss on the wake's axis over the free speed (-); parameters as in {@link #width}. */
    public static double lossOnAxis(double distance, double diameter, double thrust, double growth) {
        double ratio = width(distance, diameter, thrust, growth) / diameter;
        return 1 - Math.sqrt(Math.max(0, 1 - thrust / (8 * ratio * ratio)));
    }
}
