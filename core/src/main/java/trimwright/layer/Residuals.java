package trimwright.layer;

/**
 * Chooses what must vanish in each interval of a path.
 *
 * @param reynolds of speed 1 and length 1
 * @param critical exponent of the largest wave at which a layer becomes turbulent
 */
record Residuals(double reynolds, double critical) {
    /** The first station, so near the stagnation point that the flow there is similar: momentum, energy, no waves. */
    Dual[] first(Station b, Dual x) {
        Dual scale = x.over(b.theta());
        Dual friction = b.friction().times(0.5).times(scale);
        return new Dual[] {
            b.h().plus(2).minus(friction),
            b.h().from(1).plus(friction).minus(b.dissipation().times(scale)),
            b.stress()
        };
    }

    /** Interval between two stations, distances from the stagnation point. */
    Dual[] between(Station a, Station b, Dual xa, Dual xb) {
        if (b.regime() == Regime.LAMINAR) {
            return Interval.laminar(a, b, xa, xb);
        }
        if (a.regime() == Regime.LAMINAR) {
            return Transition.residual(a, b, xa, xb, critical, reynolds);
        }
        return Interval.turbulent(a, b, xa, xb);
    }

    static Regime regime(LayerState state, int station) {
        return state.turbulent[station] ? Regime.TURBULENT : Regime.LAMINAR;
    }
}
