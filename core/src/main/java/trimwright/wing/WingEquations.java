package trimwright.wing;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Newton's method for the strips' circulations, after Phillips and Snyder (J. Aircraft 37(4), 2000), with halved steps
 * where a full one does not help and, where none does, steps with a lift slope that stall cannot turn over.
 */
final class WingEquations {
    private static final int MOST_ITERATIONS = 60;

    /** Error in circulation over mean chord times speed at which the equations count as solved. */
    private static final double TOLERANCE = 1e-11;

    /** Lift slope (per rad) of the steps taken when true ones fail: a fifth of a flat plate's. Chosen. */
    private static final double SAFE_SLOPE = 0.2 * 2 * Math.PI;

    private static final double SAFE_STEP = 0.25; // chosen

    private WingEquations() {}

    static WingAnswer solve(PlacedWing placed, StripAir air, WingSetting setting, @Nullable WingSolved start) {
        Wing wing = placed.wing();
        int n = wing.strips();
        if (air.strips() != n) {
            throw new IllegalArgumentException("air at " + air.strips() + " strips for a wing of " + n);
        }
        double[] trail = new double[3];
        double meanSpeed = trail(placed, air, trail);
        if (meanSpeed == 0) {
            return still(wing, setting);
        }
        if (trail[0] == 0 && trail[1] == 0 && trail[2] == 0) {
            return new WingNotSolved(WingNotSolved.Reason.NO_COMMON_WIND, 0);
        }
        Influence influence = Influence.of(placed, trail[0], trail[1], trail[2]);
        StripFlow flow = new StripFlow(wing, air, setting, influence);
        double scale = meanSpeed * wing.area() / wing.span();
        int used = 0;
        if (start != null && start.strips() == n) {
            System.arraycopy(start.circulations(), 0, flow.gamma, 0, n);
            used = newton(flow, scale);
        }
        if (start == null || used < 0) {
            Arrays.fill(flow.gamma, 0);
            used = newton(flow, scale);
        }
        if (used < 0) {
            return new WingNotSolved(WingNotSolved.Reason.NOT_CONVERGED, largest(flow.error) / scale);
        }
        return WingLoads.of(flow, trail, used);
    }

    /**
     * Mean direction of the air parallel to the sea, weighted with strip areas; returns the mean speed, zero in still air.
     * Leaves zeros where there is speed but no common direction.
     */
    private static double trail(PlacedWing placed, StripAir air, double[] trail) {
        Wing wing = placed.wing();
        double sum = 0;
        double weight = 0;
        for (int i = 0; i < wing.strips(); i++) {
            double area = wing.stripChord(i) * wing.stripWidth(i);
            trail[0] += area * air.x(i);
            trail[1] += area * air.y(i);
            trail[2] += area * air.z(i);
            sum += area * Math.sqrt(air.x(i) * air.x(i) + air.y(i) * air.y(i));
            weight += area;
        }
        double meanSpeed = sum / weight;
        double downY = Math.sin(placed.heel());
        double downZ = Math.cos(placed.heel());
        double down = placed.hasSea() ? trail[1] * downY + trail[2] * downZ : 0;
        trail[1] -= down * downY;
        trail[2] -= down * downZ;
        double size = Math.sqrt(trail[0] * trail[0] + trail[1] * trail[1] + trail[2] * trail[2]);
        boolean common = size > 1e-3 * sum;
        for (int k = 0; k < 3; k++) {
            trail[k] = common ? trail[k] / size : 0;
        }
        return meanSpeed < 1e-6 ? 0 : meanSpeed;
    }

    /** Iterations used, or -1. */
    private static int newton(StripFlow flow, double scale) {
        int n = flow.n;
        LuFactors lu = new LuFactors(n);
        double[] step = new double[n];
        double[] before = new double[n];
        double merit = flow.update();
        for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
            if (largest(flow.error) <= TOLERANCE * scale) {
                return iteration;
            }
            System.arraycopy(flow.gamma, 0, before, 0, n);
            boolean better = false;
            flow.jacobian(lu.matrix(), Double.NEGATIVE_INFINITY);
            if (lu.factor()) {
                System.arraycopy(flow.error, 0, step, 0, n);
                lu.solve(step);
                for (double omega = 1; omega > 0.03 && !better; omega *= 0.5) {
                    double next = take(flow, before, step, omega);
                    better = next < merit * (1 - 1e-3 * omega);
                    if (better) {
                        merit = next;
                    }
                }
            }
            if (!better) {
                System.arraycopy(before, 0, flow.gamma, 0, n);
                flow.update();
                flow.jacobian(lu.matrix(), SAFE_SLOPE);
                if (!lu.factor()) {
                    return -1;
                }
                System.arraycopy(flow.error, 0, step, 0, n);
                lu.solve(step);
                merit = take(flow, before, step, SAFE_STEP);
            }
        }
        return -1;
    }

    private static double take(StripFlow flow, double[] before, double[] step, double omega) {
        for (int i = 0; i < flow.n; i++) {
            flow.gamma[i] = before[i] - omega * step[i];
        }
        return flow.update();
    }

    // NaN counts as larger than anything.
    private static double largest(double[] values) {
        double largest = 0;
        for (double value : values) {
            double size = Math.abs(value);
            if (!(size <= largest)) {
                largest = size;
            }
        }
        return largest;
    }

    private static WingSolved still(Wing wing, WingSetting setting) {
        int n = wing.strips();
        double[] flap = new double[n];
        double[] margin = new double[n];
        for (int i = 0; i < n; i++) {
            flap[i] = setting.flapAngle(wing.stripHeight(i) / wing.span());
            margin[i] = Math.PI;
        }
        double[] none = new double[n];
        return new WingSolved(
                WingForce.NONE, 0, 0, 0, 0, new double[3], new double[n], new double[n], flap, none, none, margin);
    }
}
