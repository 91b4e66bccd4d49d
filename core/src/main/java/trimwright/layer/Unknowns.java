package trimwright.layer;

/** Numbers of the unknowns in a {@link Dual}: four at a station, and the place of the stagnation point. */
final class Unknowns {
    static final int STRESS = 0;
    static final int THETA = 1;
    static final int DISPLACED = 2;
    static final int SPEED = 3;
    static final int SHIFT = 4;

    private Unknowns() {}

    /** A station of the state, its four values as unknowns. */
    static Station station(LayerState state, int at, Regime regime, double reynolds) {
        return station(regime, reynolds, state.stress[at], state.theta[at], state.displaced[at], state.speed[at]);
    }

    static Station station(
            Regime regime, double reynolds, double stress, double theta, double displaced, double speed) {
        Dual u = Dual.unknown(speed, SPEED);
        Dual m = Dual.unknown(displaced, DISPLACED);
        return Station.of(regime, reynolds, Dual.unknown(stress, STRESS), Dual.unknown(theta, THETA), m.over(u), u);
    }

    /** A station of the state whose values are all given. */
    static Station given(LayerState state, int at, Regime regime, double reynolds) {
        return Station.of(
                regime,
                reynolds,
                Dual.constant(state.stress[at]),
                Dual.constant(state.theta[at]),
                Dual.constant(state.displacement(at)),
                Dual.constant(state.speed[at]));
    }
}
