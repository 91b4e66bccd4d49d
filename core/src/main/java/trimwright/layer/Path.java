package trimwright.layer;

import trimwright.panel.DisplacedFlow;

/**
 * One side of an element from its stagnation point to the trailing edge: stations in the order of the flow, with their
 * distances.
 */
final class Path {
    /** Least distance from the stagnation point over panel length, so that none is zero. */
    private static final double LEAST = 1e-9;

    final int[] station;
    final double[] distance;

    /** Derivative of each distance by the stagnation point's place: +1 on the upper, -1 on the lower side. */
    final int shift;

    private Path(int[] station, double[] distance, int shift) {
        this.station = station;
        this.distance = distance;
        this.shift = shift;
    }

    /** Upper side (points before the stagnation point, walked backward). */
    static Path upper(DisplacedFlow flow, LayerState state, int element) {
        int before = state.stagnation[element];
        int n = before - flow.firstStation(element) + 1;
        int[] station = new int[n];
        double[] distance = new double[n];
        double at = fraction(state, before) * flow.panelLength(before);
        for (int i = 0; i < n; i++) {
            station[i] = before - i;
            distance[i] = Math.max(at, LEAST * flow.panelLength(before));
            if (i + 1 < n) {
                at += flow.panelLength(before - i - 1);
            }
        }
        return new Path(station, distance, 1);
    }

    /** Lower side (points behind the stagnation point). */
    static Path lower(DisplacedFlow flow, LayerState state, int element) {
        int before = state.stagnation[element];
        int n = flow.lastStation(element) - before;
        int[] station = new int[n];
        double[] distance = new double[n];
        double at = (1 - fraction(state, before)) * flow.panelLength(before);
        for (int i = 0; i < n; i++) {
            station[i] = before + 1 + i;
            distance[i] = Math.max(at, LEAST * flow.panelLength(before));
            at += i + 1 < n ? flow.panelLength(before + 1 + i) : 0;
        }
        return new Path(station, distance, -1);
    }

    /** Where between two nodes the speed turns: fraction from the first. */
    private static double fraction(LayerState state, int before) {
        return state.speed[before] / (state.speed[before] + state.speed[before + 1]);
    }

    int size() {
        return station.length;
    }

    int last() {
        return station[station.length - 1];
    }
}
