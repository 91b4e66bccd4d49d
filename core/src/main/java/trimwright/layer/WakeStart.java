package trimwright.layer;

/**
 * The wake at the trailing edge: what both sides of the element bring to it. Thicknesses and displaced flow add, stress is
 * weighted by momentum thickness, speed is the mean.
 */
final class WakeStart {
    final double stress;
    final double theta;
    final double displaced;
    final double speed;

    /** Derivatives of the stress by the unknowns of the upper ([0]) and the lower side ([1]). */
    final double[][] stressSlope = new double[2][4];

    WakeStart(LayerState state, int upper, int lower, double reynolds) {
        Dual upperStress = stress(state, upper, reynolds);
        Dual lowerStress = stress(state, lower, reynolds);
        theta = state.theta[upper] + state.theta[lower];
        displaced = state.displaced[upper] + state.displaced[lower];
        speed = 0.5 * (state.speed[upper] + state.speed[lower]);
        double share = state.theta[upper] / theta;
        stress = share * upperStress.value + (1 - share) * lowerStress.value;
        for (int v = 0; v < 4; v++) {
            stressSlope[0][v] = share * upperStress.slope(v);
            stressSlope[1][v] = (1 - share) * lowerStress.slope(v);
        }
        stressSlope[0][Unknowns.THETA] += (upperStress.value - stress) / theta;
        stressSlope[1][Unknowns.THETA] += (lowerStress.value - stress) / theta;
    }

    /** The station that the first interval of the wake begins with, its values as unknowns. */
    Station station(double reynolds) {
        return Unknowns.station(Regime.WAKE, reynolds, stress, theta, displaced, speed);
    }

    private static Dual stress(LayerState state, int station, double reynolds) {
        Station edge = Unknowns.station(state, station, Residuals.regime(state, station), reynolds);
        return edge.regime() == Regime.TURBULENT
                ? edge.stress()
                : edge.becomeTurbulent(reynolds).stress();
    }
}
