package trimwright.layer;

/** Numbers of the unknowns in a {@link Dual}: four at the earlier station, four at the later, and the stagnation point. */
final class Unknowns {
    static final int STRESS = 0;
    static final int THETA = 1;
    static final int DISPLACED = 2;
    static final int SPEED = 3;

    /** Added for the later station. */
    static final int LATER = 4;

    static final int SHIFT = 8;

    private Unknowns() {}

    /** A station of the state, its four values as unknowns from {@code offset} on. */
    static Station station(LayerState state, int at, Regime regime, double reynolds, int offset) {
        return station(
                regime, reynolds, offset, state.stress[at], state.theta[at], state.displaced[at], state.speed[at]);
    }

    static Station station(
            Regime regime, double reynolds, int offset, double stress, double theta, double displaced, double speed) {
        Dual u = Dual.unknown(speed, offset + SPEED);
        Dual m = Dual.unknown(displaced, offset + DISPLACED);
        return Station.of(
                regime,
                reynolds,
                Dual.unknown(stress, offset + STRESS),
                Dual.unknown(theta, offset + THETA),
                m.over(u),
                u);
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

    /** A distance along a path that moves with the stagnation point. */
    static Dual distance(double value, int shift) {
        return Dual.constant(value).plus(Dual.unknown(0, SHIFT).times(shift));
    }
}
