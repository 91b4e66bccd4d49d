package trimwright.wing;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Newton's method for the strips' circulations, after Phillips and Snyder (J. Aircraft 37(4), 2000), with halved steps
 * where a full one does not help and, where none does, pseudo-time steps that grow back to Newton's.
 */
final class WingEquations {
    private static final int MOST_ITERATIONS = 200;

    /** Error in circulation over mean chord times speed at which the equations count as solved. */
    private static final double TOLERANCE = 1e-11;

    /** Pseudo-time steps, in units of the circulation's own settling: the first, and the one from which Newton resumes. */
    private static final double FIRST_TIME = 0.1;

    private static final double LAST_TIME = 1e3;

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
        Influence influence = influence(placed, trail, start);
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
        return WingLoads.of(flow, used);
    }

    /** The start's, where neither wing nor wakes moved since: a new one costs as much as the rest of a warm solve. */
    private static Influence influence(PlacedWing placed, double[] trail, @Nullable WingSolved start) {
        StripFlow known = start == null ? null : start.flow();
        return known != null && known.influence.serves(placed, trail) ? known.influence : Influence.of(placed, trail);
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
        double downY = StrictMath.sin(placed.heel());
        double downZ = StrictMath.cos(placed.heel());
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
        // Pseudo-time step: infinite is Newton's step; finite ones follow the circulation as it would settle by itself.
        double time = Double.POSITIVE_INFINITY;
        for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
            if (largest(flow.error) <= TOLERANCE * scale) {
                return iteration;
            }
            System.arraycopy(flow.gamma, 0, before, 0, n);
            flow.jacobian(lu.columns());
            for (int i = 0; i < n; i++) {
                lu.columns()[i][i] += 1 / time;
            }
            if (!lu.factor()) {
                return -1;
            }
            System.arraycopy(flow.error, 0, step, 0, n);
            lu.solve(step);
            double next = take(flow, before, step, 1);
            if (time == Double.POSITIVE_INFINITY) {
                for (double omega = 0.5; omega > 0.1 && !(next < 0.9 * merit); omega *= 0.5) {
                    next = take(flow, before, step, omega);
                }
                if (!(next < 0.9 * merit)) {
                    System.arraycopy(before, 0, flow.gamma, 0, n);
                    next = flow.update();
                    time = FIRST_TIME;
                }
            } else {
                time *= Math.max(0.5, Math.min(1.25, Math.sqrt(merit / next)));
                time = time > LAST_TIME ? Double.POSITIVE_INFINITY : time;
            }
            merit = next;
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
            flap[i] = setting.flapAngle(wing.flapShare(i));
            margin[i] = Math.PI;
        }
        double[] none = new double[n];
        return new WingSolved(
                wing, null, WingForce.NONE, 0, 0, 0, 0, new double[n], new double[n], flap, none, none, margin, none);
    }
}
