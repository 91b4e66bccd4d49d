package trimwright.layer;

/**
 * Follows the waves down a path and settles which stations are turbulent. A station that becomes laminar continues the shape
 * upstream of it; one that becomes turbulent keeps its thicknesses, which Newton's method mends with less disturbance.
 */
final class WaveFollower {
    /** Range of the shape factor that a station gets which becomes laminar, chosen inside the range of the laws. */
    private static final double LEAST_SHAPE = 2;

    private static final double MOST_SHAPE = 6;

    private final Residuals residuals;
    private final StationSolver solver;

    WaveFollower(Residuals residuals) {
        this.residuals = residuals;
        solver = new StationSolver(residuals);
    }

    /** Sets kind and exponent of each station down a path, from the thicknesses and speeds of the state. */
    void follow(LayerState state, Path path) {
        state.turbulent[path.station[0]] = false;
        state.stress[path.station[0]] = 0;
        for (int i = 1; i < path.size(); i++) {
            int at = path.station[i - 1];
            int to = path.station[i];
            Dual xa = Dual.constant(path.distance[i - 1]);
            Dual xb = Dual.constant(path.distance[i]);
            Station a = Unknowns.given(state, at, Regime.LAMINAR, residuals.reynolds());
            Station b = laminar(state, to);
            boolean reached = state.turbulent[to]
                    ? !Double.isNaN(Transition.place(a, b, xa, xb, residuals.critical(), residuals.reynolds()))
                    : exponent(a, b, xa, xb) >= residuals.critical();
            if (reached) {
                makeTurbulent(state, path, i);
                return;
            }
            if (state.turbulent[to]) {
                // A turbulent station shows no waves. What would they do if it were laminar?
                LayerState trial = state.copy();
                double before = i > 1 ? state.shape(path.station[i - 2]) : state.shape(at);
                double shape = Math.min(MOST_SHAPE, Math.max(LEAST_SHAPE, 2 * state.shape(at) - before));
                solver.laminar(trial, at, to, shape, a, xa, xb);
                b = laminar(trial, to);
                if (exponent(a, b, xa, xb) >= residuals.critical()) {
                    makeTurbulent(state, path, i);
                    return;
                }
                state.theta[to] = trial.theta[to];
                state.displaced[to] = trial.displaced[to];
                state.turbulent[to] = false;
            }
            state.stress[to] = exponent(a, b, xa, xb);
        }
    }

    private static double exponent(Station a, Station b, Dual xa, Dual xb) {
        return a.stress().value + Interval.growth(a, b).value * (xb.value - xa.value);
    }

    private Station laminar(LayerState state, int station) {
        return Unknowns.given(state, station, Regime.LAMINAR, residuals.reynolds());
    }

    private void makeTurbulent(LayerState state, Path path, int from) {
        for (int i = from; i < path.size() && !state.turbulent[path.station[i]]; i++) {
            int station = path.station[i];
            state.turbulent[station] = true;
            state.stress[station] = Unknowns.given(state, station, Regime.LAMINAR, residuals.reynolds())
                    .becomeTurbulent(residuals.reynolds())
                    .stress()
                    .value;
        }
    }
}
