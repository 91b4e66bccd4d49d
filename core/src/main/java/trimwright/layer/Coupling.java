package trimwright.layer;

import trimwright.panel.DisplacedFlow;
import trimwright.panel.NoFlowException;

/**
 * Newton's method on layers and outer flow together: the speed that the layers ask for is the speed that the outer flow gives
 * for the flow they displace.
 */
final class Coupling {
    /** Root mean square of the relative changes at which the method has arrived, if a whole step was taken: its square is left. */
    private static final double ARRIVED = 1e-3;

    /** The same if a part of a step was taken, of which the rest is left. */
    private static final double ARRIVED_IN_PART = 1e-5;

    private static final double LEAST_WAKE_SHAPE = 1.0005;

    /** Largest relative growth and fall of a thickness in one step, chosen. */
    private static final double MOST_GROWTH = 1.5;

    private static final double MOST_FALL = -0.5;

    /** Steps after which only a part of each is taken, and after four times as many a smaller: where transition hops. Chosen. */
    private static final int PATIENCE = 8;

    /** Root mean square below which whole steps are taken again, chosen. */
    private static final double NEAR = 0.01;

    /** Exponent, more with each step then, by which waves may fall short at a station that is turbulent. Chosen. */
    private static final double SLACK = 0.5;

    /** Steps of which less than this share could be taken, and how many of them mean that there is no way. Chosen. */
    private static final double TINY = 0.02;

    private static final int MOST_TINY = 12;

    private final DisplacedFlow flow;
    private final Residuals residuals;
    private final Agreement agreement;
    private int tiny;
    private int steps;
    private boolean whole;

    /**
     * Of an outer flow and layers.
     *
     * @param caution weight of holding back (-), 0 for none
     */
    Coupling(DisplacedFlow flow, Residuals residuals, double caution) {
        agreement = new Agreement(flow, caution);
        this.flow = flow;
        this.residuals = residuals;
    }

    /**
     * Brings a state to agreement, in place.
     *
     * @return whether it arrived within {@code most} steps
     */
    boolean solve(LayerState state, int most) {
        double change = 1;
        for (int step = 1; step <= most; step++) {
            steps = step;
            double boldness = change < NEAR || step <= PATIENCE ? 1 : step <= 4 * PATIENCE ? 0.6 : 0.35;
            change = step(state, boldness, Math.max(0, step - PATIENCE) * SLACK);
            if (!(change < Double.POSITIVE_INFINITY)) {
                return false;
            }
            if (change < (whole ? ARRIVED : ARRIVED_IN_PART)) {
                return true;
            }
        }
        return false;
    }

    /** Steps taken. */
    int steps() {
        return steps;
    }

    /** One step; root mean square of the relative changes asked for, infinite if there was none to take. */
    private double step(LayerState state, double boldness, double slack) {
        LayerSweep sweep = new LayerSweep(flow, state, residuals, slack);
        LayerChanges layers = new LayerChanges(flow, sweep);
        double[] change;
        try {
            change = agreement.solve(state, sweep, layers);
        } catch (NoFlowException e) {
            return Double.POSITIVE_INFINITY;
        }
        return apply(state, layers.follow(change), change, boldness);
    }

    private double apply(LayerState state, double[][] all, double[] change, double boldness) {
        int n = flow.stations();
        double[] stress = all[StationChange.STRESS];
        double[] theta = all[StationChange.THETA];
        double[] speed = all[StationChange.SPEED];
        double sum = 0;
        double relax = boldness;
        for (int i = 0; i < n; i++) {
            double byStress = state.turbulent[i] ? stress[i] / state.stress[i] : 0;
            double byTheta = theta[i] / state.theta[i];
            double bySpeed = speed[i] / Math.max(0.25, 0.8 * state.speed[i]);
            double byThickness = relativeThickness(state, i, change[i], speed[i]);
            relax = limited(relax, byStress);
            relax = limited(relax, byTheta);
            relax = limited(relax, byThickness);
            relax = limited(relax, bySpeed);
            sum += byStress * byStress + byTheta * byTheta + byThickness * byThickness + bySpeed * bySpeed;
        }
        tiny += relax < TINY ? 1 : 0;
        whole = relax == 1;
        if (!(sum < Double.POSITIVE_INFINITY) || tiny > MOST_TINY) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < n; i++) {
            double thickness = state.displacement(i);
            double byThickness = relativeThickness(state, i, change[i], speed[i]);
            state.stress[i] = state.turbulent[i]
                    ? Math.min(0.3, Math.max(1e-5, state.stress[i] + relax * stress[i]))
                    : state.stress[i];
            state.theta[i] += relax * theta[i];
            state.speed[i] += relax * speed[i];
            thickness *= 1 + relax * byThickness;
            boolean wake = i > flow.lastStation(flow.elements() - 1);
            double least = wake ? LEAST_WAKE_SHAPE : Stagnation.LEAST_WALL_SHAPE;
            state.displaced[i] = Math.max(thickness, least * state.theta[i]) * state.speed[i];
        }
        Stagnation.move(flow, state);
        return Math.sqrt(sum / n);
    }

    /** Relative change of displacement thickness; none where the speed is next to nothing and says nothing about it. */
    private static double relativeThickness(LayerState state, int i, double displaced, double speed) {
        return state.speed[i] < Stagnation.NEARLY_AT_REST ? 0 : displaced / state.displaced[i] - speed / state.speed[i];
    }

    private static double limited(double relax, double change) {
        return relax * change > MOST_GROWTH
                ? MOST_GROWTH / change
                : relax * change < MOST_FALL ? MOST_FALL / change : relax;
    }
}
