package trimwright.panel;

import org.jspecify.annotations.Nullable;

/**
 * The pressure-difference rule: lift is at its maximum when on any element the rise from least pressure to the trailing edge, in ideal
 * flow, reaches a value that depends on the Reynolds number. A second limit of lift beside the separation of computed layers. It tells
 * the maximum lift, not the angle: real lift reaches that value later.
 *
 * <p>Source: VALAREZO-CHIN, digitised at second hand, the curve for Mach number 0.15. It begins at a Reynolds number of a million. Below,
 * its first stretch is led on (chosen, the cautious side): 6.5 at half a million, where to hold the lowest value would give 8.
 */
public final class PressureRule {
    /** Reynolds number over a million, and the rise that goes with it. */
    private static final double[] MILLIONS = {1, 2, 3, 4};

    private static final double[] RISE = {8, 11, 13, 14};

    /** Largest angle above that of no lift that is looked at, and the step of the search. Chosen. */
    private static final double FARTHEST = Math.toRadians(40);

    private static final double STEP = Math.toRadians(0.5);

    private static final int HALVINGS = 40;

    private PressureRule() {}

    /**
     * Where the rule sets in.
     *
     * @param alpha angle of attack (rad)
     * @param lift of all elements in ideal flow there (-)
     * @param element that reaches the rise first, from 0
     */
    public record Limit(double alpha, double lift, int element) {}

    /** Rise of the pressure coefficient (-) at which lift is at its maximum. */
    public static double rise(double reynolds) {
        double millions = reynolds / 1e6;
        for (int i = 1; i < MILLIONS.length; i++) {
            if (millions < MILLIONS[i]) {
                double share = (millions - MILLIONS[i - 1]) / (MILLIONS[i] - MILLIONS[i - 1]);
                return RISE[i - 1] + share * (RISE[i] - RISE[i - 1]);
            }
        }
        return RISE[RISE.length - 1];
    }

    /**
     * The limit on the way up from no lift; null if it is not reached within 40 degrees. An element whose own deflection passes the
     * limit is there from the beginning.
     *
     * @param reynolds on the chord of all elements together (-)
     */
    public static @Nullable Limit find(IdealFlow flow, double reynolds) {
        double most = rise(reynolds);
        double low = noLift(flow);
        double high = low;
        while (worst(flow.at(high)) < most) {
            low = high;
            high += STEP;
            if (high > noLift(flow) + FARTHEST) {
                return null;
            }
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (worst(flow.at(middle)) < most) {
                low = middle;
            } else {
                high = middle;
            }
        }
        SurfaceFlow there = flow.at(high);
        double lift = 0;
        int first = 0;
        for (int k = 0; k < there.elements(); k++) {
            lift += there.pressureLift(k);
            first = there.pressureRise(k) > there.pressureRise(first) ? k : first;
        }
        return new Limit(high, lift, first);
    }

    /** Circulation goes as a sine about the angle of no lift. */
    private static double noLift(IdealFlow flow) {
        return -StrictMath.atan2(circulation(flow.at(0)), circulation(flow.at(Math.PI / 2)));
    }

    private static double circulation(SurfaceFlow flow) {
        double sum = 0;
        for (int k = 0; k < flow.elements(); k++) {
            sum += flow.circulationLift(k);
        }
        return sum;
    }

    private static double worst(SurfaceFlow flow) {
        double most = 0;
        for (int k = 0; k < flow.elements(); k++) {
            most = Math.max(most, flow.pressureRise(k));
        }
        return most;
    }
}
