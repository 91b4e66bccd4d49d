package trimwright.platform;

/** First-order change of an {@link AirFlow} with one variable of its state, per unit of that variable. */
final class AirFlowChange {
    private final AirFlow flow;
    private final PoseChange pose;
    private final double cos;
    private final double sin;

    AirFlowChange(AirFlow flow, PoseChange pose, Conditions conditions, Variable by) {
        this.flow = flow;
        this.pose = pose;
        // The wind's angle from the bow is that from the course less the leeway.
        int turn = by == Variable.TRUE_WIND_ANGLE ? 1 : by == Variable.LEEWAY ? -1 : 0;
        double fromBow = conditions.windward().sign() * turn;
        cos = -flow.sin * fromBow;
        sin = flow.cos * fromBow;
    }

    /** Along the heading, for a wind (m/s) and its own change. */
    double levelX(double wind, double byWind) {
        return -byWind * flow.cos - wind * cos - pose.ahead();
    }

    /** To starboard, for a wind (m/s) and its own change. */
    double levelY(double wind, double byWind) {
        return -byWind * flow.sin - wind * sin - pose.abeam();
    }
}
