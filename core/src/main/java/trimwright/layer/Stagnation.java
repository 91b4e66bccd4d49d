package trimwright.layer;

import trimwright.panel.DisplacedFlow;

/** Where the flow parts at each element's nose: nodes there change sides as it moves. */
final class Stagnation {
    /** Speed below which a station is next to a stagnation point: its shape factor is that of stagnation flow. Chosen. */
    static final double NEARLY_AT_REST = 0.02;

    static final double LEAST_WALL_SHAPE = 1.02;

    /** Shape factor of stagnation flow by the laws of the laminar layer. */
    private static final double STAGNATION_SHAPE = 2.24;

    private Stagnation() {}

    /** Puts the stagnation points of a state where its speeds change sign, and mends what is next to them. */
    static void move(DisplacedFlow flow, LayerState state) {
        for (int k = 0; k < flow.elements(); k++) {
            move(flow, state, k);
        }
    }

    /** Nodes whose flow has turned change sides. */
    private static void move(DisplacedFlow flow, LayerState state, int k) {
        int first = flow.firstStation(k);
        int last = flow.lastStation(k);
        int before = state.stagnation[k];
        while (before > first + 2 && state.speed[before] <= 0) {
            turn(state, before, before + 1);
            before--;
        }
        while (before < last - 3 && state.speed[before + 1] <= 0) {
            before++;
            turn(state, before, before - 1);
        }
        state.stagnation[k] = before;
        for (int i = first; i <= last; i++) {
            state.speed[i] = Math.max(state.speed[i], 1e-7);
            double least = LEAST_WALL_SHAPE * state.theta[i] * state.speed[i];
            state.displaced[i] = Math.max(state.displaced[i], least);
            if (state.speed[i] < NEARLY_AT_REST) {
                state.displaced[i] = STAGNATION_SHAPE * state.theta[i] * state.speed[i];
            }
        }
    }

    private static void turn(LayerState state, int node, int neighbour) {
        state.speed[node] = Math.max(1e-7, -state.speed[node]);
        state.theta[node] = state.theta[neighbour];
        state.displaced[node] = STAGNATION_SHAPE * state.theta[node] * state.speed[node];
        state.turbulent[node] = false;
        state.stress[node] = 0;
    }
}
