package trimwright.card;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;
import trimwright.motion.Controls;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.motion.Pose;
import trimwright.motion.Rates;
import trimwright.platform.Balance;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.TargetFinder;
import trimwright.target.TargetPoint;
import trimwright.units.Angles;

/** Steady states as the motion model has them: wind from the north, from starboard, the leeward foil to port. */
final class MotionStart {
    /** Strips of the wing: what the motion model asks for. */
    static final int STRIPS = 18;

    /** Wind from the north, so that the heading alone makes the angle (rad). */
    static final double WIND_FROM = 0;

    private MotionStart() {}

    /** The target's state with its crew where they balance it, as a book does not hold their place; null where it is not found again. */
    static @Nullable SailingState withCrew(Platform platform, TargetPoint point) {
        SailingState shown = point.state();
        Map<Variable, Double> trim = new EnumMap<>(Variable.class);
        for (Variable variable : new Variable[] {Variable.CAMBER, Variable.TWIST, Variable.TWIST_MID_RATIO}) {
            trim.put(variable, shown.get(variable));
        }
        Balance found =
                new TargetFinder(platform, Map.of()).bestNear(point.branch(), point.trueWindSpeed(), shown, trim);
        return found == null ? null : found.state();
    }

    /** The state in the model. */
    static MotionState of(MotionModel model, SailingState state) {
        Controls controls = new Controls(
                state.get(Variable.SHEET),
                state.get(Variable.CAMBER),
                state.get(Variable.TWIST),
                state.get(Variable.TWIST_MID_RATIO),
                /* portRake= */ state.get(Variable.MAIN_RAKE),
                /* starboardRake= */ state.get(Variable.MAIN_RAKE),
                state.get(Variable.ELEVATOR),
                state.get(Variable.ELEVATOR_DIFFERENTIAL),
                // A rudder that turns away from a wind from starboard turns to port.
                -state.get(Variable.RUDDER),
                /* portBoard= */ 1,
                /* starboardBoard= */ 0,
                state.get(Variable.CREW_PLACE));
        double roll = state.get(Variable.HEEL);
        double pitch = state.get(Variable.PITCH);
        double height = model.heightFor(state.get(Variable.RIDE_HEIGHT), roll, pitch, controls.crew());
        double speed = state.get(Variable.BOAT_SPEED);
        double leeway = state.get(Variable.LEEWAY);
        Pose pose = new Pose(0, 0, height, heading(state), roll, pitch);
        Rates rates = new Rates(speed * StrictMath.cos(leeway), -speed * StrictMath.sin(leeway), 0, 0, 0, 0);
        return new MotionState(pose, rates, controls);
    }

    /** Heading on which the state sails (rad). */
    static double heading(SailingState state) {
        return Angles.compass(WIND_FROM - state.trueWindAngleToBow());
    }

    /** Apparent wind at 10 m, from the bow, of a state in a wind (m/s). */
    static ApparentWind apparent(SailingState state, double wind) {
        double speed = state.get(Variable.BOAT_SPEED);
        double leeway = state.get(Variable.LEEWAY);
        return new TrueWind(wind, state.trueWindAngleToBow())
                .apparent(speed * StrictMath.cos(leeway), -speed * StrictMath.sin(leeway));
    }
}
