package trimwright.layer;

/** Newton's method on single stations, given the one before: for first guesses and where a layer's kind changes. */
final class StationSolver {
    private static final int MOST_STEPS = 30;

    /** Shape factors beyond which a layer is taken as separating, chosen inside the range of the laws. */
    private static final double LAMINAR_LIMIT = 3.8;

    private static final double TURBULENT_LIMIT = 2.5;

    private final Residuals residuals;

    StationSolver(Residuals residuals) {
        this.residuals = residuals;
    }

    /** One station of a wall: at the given speed if that can be, else at a given shape. */
    void wall(LayerState state, int at, int to, Regime regime, Station a, Dual xa, Dual xb) {
        double h = state.shape(at);
        double limit = regime == Regime.LAMINAR ? LAMINAR_LIMIT : TURBULENT_LIMIT;
        if (regime == Regime.TURBULENT && a.regime() == Regime.LAMINAR) {
            h = 2.0;
            state.stress[to] = 0.03;
        } else {
            state.stress[to] = state.stress[at];
        }
        state.theta[to] = state.theta[at];
        state.displaced[to] = h * state.theta[at] * state.speed[to];
        Law law = b -> residuals.between(a, b, xa, xb);
        boolean done = solve(state, to, regime, law, 0);
        if (!done || state.shape(to) > limit) {
            double run = (xb.value - xa.value) / state.theta[at];
            double shape = regime == Regime.LAMINAR
                    ? Math.min(LAMINAR_LIMIT + 1, Math.max(LAMINAR_LIMIT, state.shape(at) + 0.03 * run))
                    : Math.max(TURBULENT_LIMIT, state.shape(at) - 0.15 * run);
            solve(state, to, regime, law, shape);
        }
    }

    /** One station of a wall, laminar with a given shape, at the speed that it has. */
    void laminar(LayerState state, int at, int to, double shape, Station a, Dual xa, Dual xb) {
        double speed = state.speed[to];
        state.theta[to] = state.theta[at];
        solve(state, to, Regime.LAMINAR, b -> Interval.laminar(a, b, xa, xb), shape);
        state.speed[to] = speed;
        state.displaced[to] = shape * state.theta[to] * speed;
    }

    /** One station of a wake, at the given speed if that can be, else at a shape that decays from {@code h}. */
    void wake(LayerState state, int to, Station a, Dual xa, Dual xb, double h) {
        Law law = b -> Interval.turbulent(a, b, xa, xb);
        boolean done = solve(state, to, Regime.WAKE, law, 0);
        if (!done || state.shape(to) > TURBULENT_LIMIT) {
            double decayed = 1 + (h - 1) * StrictMath.exp(-0.1 * (xb.value - xa.value) / a.theta().value);
            solve(state, to, Regime.WAKE, law, Math.max(1.05, decayed));
        }
    }

    @FunctionalInterface
    interface Law {
        Dual[] at(Station b);
    }

    /**
     * Newton's method on one station.
     *
     * @param shape given shape factor, with the speed unknown; 0: speed given, displaced flow unknown
     * @return whether it converged; if not, the station keeps a harmless guess
     */
    boolean solve(LayerState state, int to, Regime regime, Law law, double shape) {
        double stress = regime == Regime.LAMINAR ? 0 : state.stress[to];
        double theta = state.theta[to];
        double speed = state.speed[to];
        double displaced = shape > 0 ? shape * theta * speed : state.displaced[to];
        for (int step = 0; step < MOST_STEPS; step++) {
            Station b = Unknowns.station(regime, residuals.reynolds(), Unknowns.LATER, stress, theta, displaced, speed);
            Dual[] r = law.at(b);
            double[][] a = new double[3][4];
            for (int i = 0; i < 3; i++) {
                a[i][0] = r[i].slope(Unknowns.LATER + Unknowns.STRESS);
                double byFlow = r[i].slope(Unknowns.LATER + Unknowns.DISPLACED);
                a[i][1] = r[i].slope(Unknowns.LATER + Unknowns.THETA) + (shape > 0 ? byFlow * shape * speed : 0);
                a[i][2] = shape > 0 ? r[i].slope(Unknowns.LATER + Unknowns.SPEED) + byFlow * shape * theta : byFlow;
                a[i][3] = -r[i].value;
            }
            double[] change = ThreeByThree.solve(a);
            double largest = Math.abs(change[1] / theta);
            largest = Math.max(largest, Math.abs(shape > 0 ? change[2] / speed : change[2] / displaced));
            largest = regime == Regime.LAMINAR ? largest : Math.max(largest, Math.abs(change[0] / stress));
            if (!(largest < Double.POSITIVE_INFINITY)) {
                return false;
            }
            double relax = largest > 0.3 ? 0.3 / largest : 1;
            stress = regime == Regime.LAMINAR ? 0 : stress + relax * change[0];
            theta += relax * change[1];
            if (shape > 0) {
                speed += relax * change[2];
                displaced = shape * theta * speed;
            } else {
                displaced = Math.max(displaced + relax * change[2], 1.02 * theta * speed);
            }
            if (largest < 1e-6) {
                state.stress[to] = regime == Regime.LAMINAR ? state.stress[to] : stress;
                state.theta[to] = theta;
                state.displaced[to] = displaced;
                state.speed[to] = speed;
                return true;
            }
        }
        return false;
    }
}
