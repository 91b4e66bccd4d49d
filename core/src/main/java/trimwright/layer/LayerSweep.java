package trimwright.layer;

import trimwright.panel.DisplacedFlow;

/**
 * One sweep down all layers of a state: settles which stations are turbulent, brings each station into accord with the one before
 * it, and tells how each answers to changes ({@link StationChange}). Newton's method then has the agreement with the flow outside
 * left to find.
 */
final class LayerSweep {
    /** Range of the shape factor that a station gets which becomes laminar, chosen inside the range of the laws. */
    private static final double LEAST_SHAPE = 2;

    private static final double MOST_SHAPE = 6;

    private final DisplacedFlow flow;
    private final LayerState state;
    private final Residuals residuals;
    private final StationSolver solver;

    /** How much a turbulent station's exponent may fall short of the critical one before it becomes laminar. */
    private final double slack;

    /** By station. */
    final StationChange[] change;

    /** By element. */
    final Path[] upper;

    final Path[] lower;
    final WakeStart[] start;

    LayerSweep(DisplacedFlow flow, LayerState state, Residuals residuals, double slack) {
        this.flow = flow;
        this.state = state;
        this.residuals = residuals;
        this.slack = slack;
        solver = new StationSolver(residuals);
        change = new StationChange[flow.stations()];
        upper = new Path[flow.elements()];
        lower = new Path[flow.elements()];
        start = new WakeStart[flow.elements()];
        for (int k = 0; k < flow.elements(); k++) {
            upper[k] = Path.upper(flow, state, k);
            lower[k] = Path.lower(flow, state, k);
            side(upper[k]);
            side(lower[k]);
            wake(k);
        }
    }

    private void side(Path path) {
        int first = path.station[0];
        state.turbulent[first] = false;
        state.stress[first] = 0;
        Dual x = Dual.distance(path.distance[0], path.shift);
        StationSolver.Mended at = solver.mend(state, first, Regime.LAMINAR, b -> residuals.first(b, x), 0);
        change[first] = StationChange.first(at.residual());
        Station before = at.station().fixed();
        boolean turbulent = false;
        for (int i = 1; i < path.size(); i++) {
            int to = path.station[i];
            StationSolver.Mended next = null;
            if (!turbulent) {
                double[] values = {state.theta[to], state.displaced[to], state.speed[to], state.stress[to]};
                double least = residuals.critical();
                if (state.turbulent[to]) {
                    continueShape(path, i);
                    least -= slack;
                }
                next = mend(path, i, before, Regime.LAMINAR);
                turbulent = state.stress[to] >= least;
                if (turbulent) {
                    state.theta[to] = values[0];
                    state.displaced[to] = values[1];
                    state.speed[to] = values[2];
                    state.stress[to] = state.turbulent[to] ? values[3] : firstStress(to);
                }
            } else if (!state.turbulent[to]) {
                state.stress[to] = firstStress(to);
            }
            state.turbulent[to] = turbulent;
            if (next == null || turbulent) {
                next = mend(path, i, before, Regime.TURBULENT);
            }
            before = next.station().fixed();
            Dual[] byEarlier = residuals.between(
                    at.station(), before, Dual.constant(path.distance[i - 1]), Dual.constant(path.distance[i]));
            change[to] = StationChange.of(next.residual(), byEarlier);
            at = next;
        }
    }

    private StationSolver.Mended mend(Path path, int i, Station a, Regime regime) {
        int to = path.station[i];
        Dual xa = Dual.distance(path.distance[i - 1], path.shift);
        Dual xb = Dual.distance(path.distance[i], path.shift);
        return solver.mend(state, to, regime, b -> residuals.between(a, b, xa, xb), ownResponse(to));
    }

    private double ownResponse(int station) {
        return Math.max(0, flow.response(station, station));
    }

    /** A turbulent station shows no waves. What it would be were it laminar: the shape upstream of it goes on. */
    private void continueShape(Path path, int i) {
        int at = path.station[i - 1];
        int to = path.station[i];
        double before = i > 1 ? state.shape(path.station[i - 2]) : state.shape(at);
        double shape = Math.min(MOST_SHAPE, Math.max(LEAST_SHAPE, 2 * state.shape(at) - before));
        state.theta[to] = state.theta[at];
        state.displaced[to] = shape * state.theta[to] * state.speed[to];
    }

    private double firstStress(int station) {
        return Unknowns.given(state, station, Regime.LAMINAR, residuals.reynolds())
                .becomeTurbulent(residuals.reynolds())
                .stress()
                .value;
    }

    private void wake(int element) {
        start[element] = new WakeStart(state, upper[element].last(), lower[element].last(), residuals.reynolds());
        Station a = start[element].station(residuals.reynolds());
        Station fixed = a.fixed();
        // The wake's distances count from the upper side's, but do not move with the stagnation point: they enter as
        // differences and in the wake as a mere weight.
        double x = upper[element].distance[upper[element].size() - 1];
        for (int w = 0; w < flow.wakeSteps(); w++) {
            int to = flow.wakeStation(element, w);
            Dual xa = Dual.constant(x);
            x += flow.wakeLength(element, w);
            Dual xb = Dual.constant(x);
            Station before = fixed;
            StationSolver.Mended next =
                    solver.mend(state, to, Regime.WAKE, b -> Interval.turbulent(before, b, xa, xb), ownResponse(to));
            fixed = next.station().fixed();
            change[to] = StationChange.of(next.residual(), Interval.turbulent(a, fixed, xa, xb));
            a = next.station();
        }
    }
}
