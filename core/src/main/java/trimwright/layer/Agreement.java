package trimwright.layer;

import java.util.Arrays;
import trimwright.panel.DenseLu;
import trimwright.panel.DisplacedFlow;

/**
 * The dense set of equations of a step: changes of displaced flow at all stations and of the stagnation points, such that the speed
 * that the layers ask for is the speed that the outer flow gives.
 */
final class Agreement {
    private final DisplacedFlow flow;
    private final double caution;

    /** Kept from step to step: memory at hand is quicker than new. */
    private final double[][] matrix;

    /**
     * Of an outer flow.
     *
     * @param caution weight of holding back (-), 0 for none
     */
    Agreement(DisplacedFlow flow, double caution) {
        this.flow = flow;
        this.caution = caution;
        int n = flow.stations() + flow.elements();
        matrix = new double[n][n];
    }

    /**
     * Changes by station, then by element.
     *
     * @throws trimwright.panel.NoFlowException if there are none
     */
    double[] solve(LayerState state, LayerSweep sweep, LayerChanges layers) {
        int n = flow.stations();
        double[] sign = new double[n];
        Arrays.fill(sign, 1);
        for (Path path : sweep.upper) {
            for (int station : path.station) {
                sign[station] = -1;
            }
        }
        double[] right = lacking(state, sign);
        double[] constant = layers.follow(new double[n + flow.elements()])[StationChange.SPEED];
        for (int i = 0; i < n; i++) {
            right[i] -= constant[i];
        }
        for (int k = 0; k < flow.elements(); k++) {
            right[n + k] = stagnationRight(state, sweep, k);
        }
        fill(state, sweep, layers, sign, right);
        return new DenseLu(matrix).solve(right);
    }

    /** By station, the speed that the outer flow gives for the displaced flow less that of the state; 0 by element. */
    private double[] lacking(LayerState state, double[] sign) {
        int n = flow.stations();
        double[] displaced = new double[n];
        for (int i = 0; i < n; i++) {
            displaced[i] = sign[i] * state.displaced[i];
        }
        double[] lacking = new double[n + flow.elements()];
        for (int i = 0; i < n; i++) {
            lacking[i] = sign[i] * flow.speed(i, displaced) - state.speed[i];
        }
        return lacking;
    }

    private void fill(LayerState state, LayerSweep sweep, LayerChanges layers, double[] sign, double[] right) {
        int n = flow.stations();
        for (int i = 0; i < n; i++) {
            flow.fillResponse(i, -sign[i], sign, matrix[i]);
            Arrays.fill(matrix[i], n, n + flow.elements(), 0);
        }
        layers.addSpeeds(matrix);
        hold(state, right);
        for (int k = 0; k < flow.elements(); k++) {
            fillStagnation(state, sweep, n + k, k);
        }
    }

    /**
     * Holds the displaced flow back as time would: a layer thickens at a rate in proportion to the speed that it lacks. The farther
     * from agreement, the shorter the time of a step; near agreement the steps are Newton's own.
     *
     * <p>Source: KELLEY-KEYES-1998, pseudo-transient continuation.
     */
    private void hold(LayerState state, double[] right) {
        double worst = 0;
        for (int i = 0; i < flow.stations(); i++) {
            if (state.speed[i] > Stagnation.NEARLY_AT_REST) {
                worst = Math.max(worst, Math.abs(right[i] / state.speed[i]));
            }
        }
        double rate = caution * Math.min(1, worst);
        for (int i = 0; i < flow.stations(); i++) {
            matrix[i][i] -= rate * state.speed[i] / state.displaced[i];
        }
    }

    /** The stagnation point moves with the speeds of its two neighbours. */
    private void fillStagnation(LayerState state, LayerSweep sweep, int row, int element) {
        int a = state.stagnation[element];
        int b = a + 1;
        StationChange atA = sweep.change[a];
        StationChange atB = sweep.change[b];
        double byA = byFirst(state, a);
        double byB = bySecond(state, a);
        Arrays.fill(matrix[row], 0);
        matrix[row][a] = -byA * atA.displaced[StationChange.SPEED];
        matrix[row][b] = -byB * atB.displaced[StationChange.SPEED];
        matrix[row][row] = 1 - byA * atA.shift[StationChange.SPEED] - byB * atB.shift[StationChange.SPEED];
    }

    private double stagnationRight(LayerState state, LayerSweep sweep, int element) {
        int a = state.stagnation[element];
        return byFirst(state, a) * sweep.change[a].constant[StationChange.SPEED]
                + bySecond(state, a) * sweep.change[a + 1].constant[StationChange.SPEED];
    }

    /** Shift of the stagnation point by the speed of the node before it, and by that of the one behind. */
    private double byFirst(LayerState state, int node) {
        double sum = state.speed[node] + state.speed[node + 1];
        return flow.panelLength(node) * state.speed[node + 1] / (sum * sum);
    }

    private double bySecond(LayerState state, int node) {
        double sum = state.speed[node] + state.speed[node + 1];
        return -flow.panelLength(node) * state.speed[node] / (sum * sum);
    }
}
