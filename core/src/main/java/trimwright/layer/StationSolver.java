package trimwright.layer;

/** Newton's method on single stations, given the one before: for first guesses and where a layer's kind changes. */
final class StationSolver {
    private static final int MOST_STEPS = 30;

    /** Steps of mending a station, and the relative change of one, chosen: what takes longer is left to the next step of all. */
    private static final int MOST_MENDS = 12;

    private static final double MOST_MEND = 0.3;

    /** Relative change at which a station is in accord: what is left the step of all takes away. Chosen. */
    private static final double MENDED = 1e-3;

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

    /** One station of a wake, at the given speed if that can be, else at a shape that decays from {@code h}. */
    void wake(LayerState state, int to, Station a, Dual xa, Dual xb, double h) {
        Law law = b -> Interval.turbulent(a, b, xa, xb);
        boolean done = solve(state, to, Regime.WAKE, law, 0);
        if (!done || state.shape(to) > TURBULENT_LIMIT) {
            double decayed = 1 + (h - 1) * StrictMath.exp(-0.1 * (xb.value - xa.value) / a.theta().value);
            solve(state, to, Regime.WAKE, law, Math.max(1.05, decayed));
        }
    }

    /**
     * Brings a station of a state into accord with the one before it, as near to what it was as the flow outside would go by
     * itself: where the layer displaces more the speed rises as that station's own displaced flow raises it. With this line in
     * place of a given speed or thickness the equations have a solution on both sides of separation.
     *
     * <p>Source: VELDMAN-1981.
     *
     * @param response speed at the station by the flow that it displaces
     * @return the station with its residuals, which do not vanish if it could not be brought into accord and stays as it was
     */
    Mended mend(LayerState state, int to, Regime regime, Law law, double response) {
        double stress = state.stress[to];
        double theta = state.theta[to];
        double displaced = state.displaced[to];
        double speed = state.speed[to];
        for (int step = 0; step < MOST_MENDS; step++) {
            Station b = Unknowns.station(regime, residuals.reynolds(), stress, theta, displaced, speed);
            Dual[] r = law.at(b);
            double[] change = ThreeByThree.solve(row(r[0], response), row(r[1], response), row(r[2], response));
            double largest = Math.max(Math.abs(change[1] / theta), Math.abs(change[2] / displaced));
            largest = Math.max(largest, Math.abs(response * change[2] / speed));
            largest = regime == Regime.LAMINAR ? largest : Math.max(largest, Math.abs(change[0] / stress));
            if (!(largest < Double.POSITIVE_INFINITY)) {
                break;
            }
            if (largest < MENDED) {
                state.stress[to] = stress;
                state.theta[to] = theta;
                state.displaced[to] = displaced;
                state.speed[to] = speed;
                return settled(state, to, b, r);
            }
            double relax = largest > MOST_MEND ? MOST_MEND / largest : 1;
            stress = regime == Regime.LAMINAR ? stress : stress + relax * change[0];
            theta += relax * change[1];
            displaced += relax * change[2];
            speed += relax * response * change[2];
        }
        Station b = Unknowns.station(state, to, regime, residuals.reynolds());
        return settled(state, to, b, law.at(b));
    }

    /** Equation for the changes of stress, momentum thickness and displaced flow. */
    private static double[] row(Dual r, double response) {
        return new double[] {
            r.slope(Unknowns.STRESS),
            r.slope(Unknowns.THETA),
            r.slope(Unknowns.DISPLACED) + response * r.slope(Unknowns.SPEED),
            -r.value
        };
    }

    /** The exponent of waves follows from the rest. */
    private static Mended settled(LayerState state, int to, Station b, Dual[] r) {
        if (b.regime() != Regime.LAMINAR) {
            return new Mended(b, r);
        }
        double less = r[2].value;
        state.stress[to] -= less;
        r[2] = r[2].minus(less);
        return new Mended(b.withExponent(state.stress[to]), r);
    }

    /** A station in accord, and what must vanish there. */
    record Mended(Station station, Dual[] residual) {}

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
            Station b = Unknowns.station(regime, residuals.reynolds(), stress, theta, displaced, speed);
            Dual[] r = law.at(b);
            double[][] a = new double[3][4];
            for (int i = 0; i < 3; i++) {
                a[i][0] = r[i].slope(Unknowns.STRESS);
                double byFlow = r[i].slope(Unknowns.DISPLACED);
                a[i][1] = r[i].slope(Unknowns.THETA) + (shape > 0 ? byFlow * shape * speed : 0);
                a[i][2] = shape > 0 ? r[i].slope(Unknowns.SPEED) + byFlow * shape * theta : byFlow;
                a[i][3] = -r[i].value;
            }
            double[] change = ThreeByThree.solve(a[0], a[1], a[2]);
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
