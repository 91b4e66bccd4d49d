package trimwright.platform;

import trimwright.boat.WingSpec;
import trimwright.wing.Wing;
import trimwright.wing.WingChange;

/** First-order change of what a {@link WingAir} tells a wing, with one variable of the state. */
final class WingAirChange {
    private WingAirChange() {}

    static WingChange of(Wing wing, WingSpec spec, SailingState state, Conditions conditions, Variable by) {
        int side = conditions.windward().sign();
        return switch (by) {
            case SHEET -> WingChange.ofTrim(side, 0, 0, 0);
            case CAMBER -> WingChange.ofTrim(0, side, 0, 0);
            case TWIST -> WingChange.ofTrim(0, 0, side, 0);
            case TWIST_MID_RATIO -> WingChange.ofTrim(0, 0, 0, 1);
            case RUDDER, MAIN_RAKE, ELEVATOR, ELEVATOR_DIFFERENTIAL, CREW_PLACE -> WingChange.ofTrim(0, 0, 0, 0);
            case BOAT_SPEED, LEEWAY, HEEL, RIDE_HEIGHT, PITCH, TRUE_WIND_ANGLE ->
                ofPlace(wing, spec, state, conditions, by);
        };
    }

    private static WingChange ofPlace(
            Wing wing, WingSpec spec, SailingState state, Conditions conditions, Variable by) {
        int n = wing.strips();
        double[] x = new double[n];
        double[] y = new double[n];
        double[] z = new double[n];
        Pose pose = Pose.of(state, conditions.windward());
        AirFlow flow = new AirFlow(state, pose, conditions);
        PoseChange poseChange = new PoseChange(pose, state, conditions.windward(), by);
        AirFlowChange flowChange = new AirFlowChange(flow, poseChange, conditions, by);
        for (int i = 0; i < n; i++) {
            double up = -spec.footHeight() - wing.stripHeight(i);
            double height = -pose.depth(spec.x(), 0, up);
            double wind = conditions.wind().speedAt(height);
            double byWind = conditions.wind().slopeAt(height) * -poseChange.depth(spec.x(), 0, up);
            double ahead = flow.levelX(wind);
            double abeam = flow.levelY(wind);
            double byAhead = flowChange.levelX(wind, byWind);
            double byAbeam = flowChange.levelY(wind, byWind);
            x[i] = poseChange.bodyX(ahead, byAhead);
            y[i] = poseChange.bodyY(ahead, abeam, byAhead, byAbeam);
            z[i] = poseChange.bodyZ(ahead, abeam, byAhead, byAbeam);
        }
        double heel = by == Variable.HEEL ? conditions.windward().sign() : 0;
        return WingChange.ofPlace(heel, -poseChange.depth(spec.x(), 0, -spec.footHeight()), x, y, z);
    }
}
