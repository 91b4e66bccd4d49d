package trimwright.platform;

import trimwright.air.AirState;
import trimwright.boat.WingSpec;
import trimwright.wing.StripAir;
import trimwright.wing.Wing;
import trimwright.wing.WingSetting;

/** How a wing stands in the wind on a sailing boat: the air at each strip, the height of its foot, its setting. */
public final class WingAir {
    private WingAir() {}

    /** The air that each strip meets: the wind at its own height less the boat's velocity, in body axes. */
    public static StripAir of(Wing wing, WingSpec spec, SailingState state, Conditions conditions, AirState air) {
        int n = wing.strips();
        double[] x = new double[n];
        double[] y = new double[n];
        double[] z = new double[n];
        Pose pose = Pose.of(state, conditions.windward());
        AirFlow flow = new AirFlow(state, pose, conditions);
        for (int i = 0; i < n; i++) {
            double height = -pose.depth(spec.x(), 0, -spec.footHeight() - wing.stripHeight(i));
            double wind = conditions.wind().speedAt(height);
            double ahead = flow.levelX(wind);
            double abeam = flow.levelY(wind);
            x[i] = pose.bodyX(ahead);
            y[i] = pose.bodyY(ahead, abeam);
            z[i] = pose.bodyZ(ahead, abeam);
        }
        return new StripAir(x, y, z, air);
    }

    /** Foot of the wing above the undisturbed water (m). */
    public static double footHeight(WingSpec spec, SailingState state, Conditions conditions) {
        return -Pose.of(state, conditions.windward()).depth(spec.x(), 0, -spec.footHeight());
    }

    /** The wing's controls in the signed form. */
    public static WingSetting setting(SailingState state, Conditions conditions) {
        int sign = conditions.windward().sign();
        return new WingSetting(
                sign * state.get(Variable.SHEET),
                sign * state.get(Variable.CAMBER),
                sign * state.get(Variable.TWIST),
                state.get(Variable.TWIST_MID_RATIO));
    }
}
