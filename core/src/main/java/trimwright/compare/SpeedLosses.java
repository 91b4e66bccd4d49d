package trimwright.compare;

import java.util.Arrays;

/**
 * What the model says about each instant of a boat's track: shares of speed that trim and attitude cost, and how much
 * wind others took.
 */
public final class SpeedLosses {
    private final double[] trim;
    private final double[] attitude;
    private final double[] clearWind;

    /**
     * @param trim logarithm of speed at the target's trim over that at the trim measured, NaN where not known
     * @param attitude the same of heel and ride height
     * @param clearWind wind speed without other boats over that with them (-), 1 where not known
     */
    SpeedLosses(double[] trim, double[] attitude, double[] clearWind) {
        this.trim = trim.clone();
        this.attitude = attitude.clone();
        this.clearWind = clearWind.clone();
    }

    /** Nothing is known of trim, attitude and others' wakes. */
    public static SpeedLosses none(int size) {
        double[] unknown = new double[size];
        double[] ones = new double[size];
        Arrays.fill(unknown, Double.NaN);
        Arrays.fill(ones, 1);
        return new SpeedLosses(unknown, unknown, ones);
    }

    double trim(int i) {
        return trim[i];
    }

    double attitude(int i) {
        return attitude[i];
    }

    double clearWind(int i) {
        return clearWind[i];
    }
}
