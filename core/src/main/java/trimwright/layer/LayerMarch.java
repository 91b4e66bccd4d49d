package trimwright.layer;

import trimwright.panel.DisplacedFlow;

/**
 * A first guess of all layers: marched downstream station by station under the ideal flow's speeds; where a layer would
 * separate its shape factor is given instead and the speed follows.
 */
final class LayerMarch {
    private static final double LEAST_SPEED = 1e-3;

    private final DisplacedFlow flow;
    private final Residuals residuals;
    private final StationSolver solver;

    LayerMarch(DisplacedFlow flow, Residuals residuals) {
        this.flow = flow;
        this.residuals = residuals;
        solver = new StationSolver(residuals);
    }

    /** A state under the ideal flow. */
    LayerState guess() {
        LayerState state = new LayerState(flow.stations(), flow.elements());
        for (int k = 0; k < flow.elements(); k++) {
            state.stagnation[k] = stagnation(k);
            for (int i = flow.firstStation(k); i <= flow.lastStation(k); i++) {
                state.speed[i] = Math.max(LEAST_SPEED, Math.abs(flow.idealSpeed(i)));
            }
            Path upper = Path.upper(flow, state, k);
            Path lower = Path.lower(flow, state, k);
            side(state, upper);
            side(state, lower);
            wake(state, k, upper, lower);
        }
        return state;
    }

    /** Last node on the upper side: there the ideal flow still runs against the order of points. */
    private int stagnation(int element) {
        int first = flow.firstStation(element);
        int last = flow.lastStation(element);
        for (int i = first + 1; i < last - 1; i++) {
            if (flow.idealSpeed(i) <= 0 && flow.idealSpeed(i + 1) > 0) {
                return i;
            }
        }
        return (first + last) / 2;
    }

    private void side(LayerState state, Path path) {
        int first = path.station[0];
        // Similar stagnation flow, Thwaites: a guess that the next lines improve.
        state.theta[first] = Math.sqrt(0.075 * path.distance[0] / (state.speed[first] * residuals.reynolds()));
        state.displaced[first] = 2.2 * state.theta[first] * state.speed[first];
        solver.solve(state, first, Regime.LAMINAR, b -> residuals.first(b, Dual.constant(path.distance[0])), 0);
        boolean turbulent = false;
        for (int i = 1; i < path.size(); i++) {
            int at = path.station[i - 1];
            int to = path.station[i];
            Dual xa = Dual.constant(path.distance[i - 1]);
            Dual xb = Dual.constant(path.distance[i]);
            Station a = Unknowns.given(state, at, Residuals.regime(state, at), residuals.reynolds());
            if (!turbulent) {
                solver.wall(state, at, to, Regime.LAMINAR, a, xa, xb);
                Station b = Unknowns.given(state, to, Regime.LAMINAR, residuals.reynolds());
                double place = Transition.place(a, b, xa, xb, residuals.critical(), residuals.reynolds());
                if (Double.isNaN(place)) {
                    state.stress[to] = a.stress().value + Interval.growth(a, b).value * (xb.value - xa.value);
                    continue;
                }
                turbulent = true;
                state.speed[to] = Math.max(LEAST_SPEED, Math.abs(flow.idealSpeed(to)));
            }
            state.turbulent[to] = true;
            solver.wall(state, at, to, Regime.TURBULENT, a, xa, xb);
        }
    }

    private void wake(LayerState state, int element, Path upper, Path lower) {
        WakeStart start = new WakeStart(state, upper.last(), lower.last(), residuals.reynolds());
        double x = upper.distance[upper.size() - 1];
        double stress = start.stress;
        double theta = start.theta;
        double displaced = start.displaced;
        double speed = start.speed;
        for (int w = 0; w < flow.wakeSteps(); w++) {
            int to = flow.wakeStation(element, w);
            state.turbulent[to] = true;
            state.speed[to] = Math.max(LEAST_SPEED, flow.idealSpeed(to));
            Station a = Unknowns.station(Regime.WAKE, residuals.reynolds(), stress, theta, displaced, speed)
                    .fixed();
            Dual xa = Dual.constant(x);
            x += flow.wakeLength(element, w);
            Dual xb = Dual.constant(x);
            state.stress[to] = stress;
            state.theta[to] = theta;
            double h = 1 + (displaced / (speed * theta) - 1) * 0.9;
            state.displaced[to] = h * theta * state.speed[to];
            solver.wake(state, to, a, xa, xb, h);
            stress = state.stress[to];
            theta = state.theta[to];
            displaced = state.displaced[to];
            speed = state.speed[to];
        }
    }
}
