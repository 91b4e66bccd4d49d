package trimwright.card;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.motion.Commands;
import trimwright.motion.Controls;
import trimwright.motion.LocalWind;
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
import trimwright.water.WaterState;

/**
 * The boat in a gust when nobody moves anything, in time: hands off every control, the wind changed at once. What comes after the
 * first two seconds no crew would let happen, so no more is told.
 *
 * @param heelAfterSecond heel one second after the change (rad), positive to windward
 * @param heelAfterTwo two seconds after it (rad)
 * @param secondsToLimit until heel passes the boat file's least or largest heel (s); infinite where it does not in that time
 */
public record GustSwing(double heelAfterSecond, double heelAfterTwo, double secondsToLimit) {
    /** Strips of the wing: what the motion model asks for. */
    private static final int STRIPS = 18;

    /** Wind from the north, so that the heading alone makes the angle. */
    private static final double WIND_FROM = 0;

    /** A state that stands on a bound of heel may waver about it by rounding (rad): a tenth of a degree, under what is seen. */
    private static final double WAVER = Math.PI / 1800;

    /** How long is told (s). */
    private static final double TOLD = 2;

    /**
     * The swing of a boat at a solved foiling target.
     *
     * @param platform of the target, in that air and water
     * @param change of the true wind speed (m/s)
     * @return null where the target's state is not found again with its crew
     */
    public static @Nullable GustSwing of(
            Platform platform, AirState air, WaterState water, TargetPoint point, double change) {
        SailingState state = withCrew(platform, point);
        if (state == null) {
            return null;
        }
        Boat boat = platform.boat();
        MotionModel model = new MotionModel(boat, platform.wing(), air, water, STRIPS);
        MotionState now = start(model, state);
        Commands hold = new Commands(now.controls(), Commands.FlapWork.TRIM);
        LocalWind wind = LocalWind.of(point.trueWindSpeed() + change, WIND_FROM);
        double least = Math.min(boat.limits().heelMin(), state.get(Variable.HEEL)) - WAVER;
        double most = Math.max(boat.limits().heelMax(), state.get(Variable.HEEL)) + WAVER;
        int steps = (int) Math.round(TOLD / MotionModel.STEP);
        double afterSecond = Double.NaN;
        double limit = Double.POSITIVE_INFINITY;
        for (int i = 1; i <= steps; i++) {
            now = model.step(now, hold, wind, MotionModel.STEP);
            double heel = now.pose().roll();
            if (Double.isInfinite(limit) && (heel < least || heel > most)) {
                limit = i * MotionModel.STEP;
            }
            if (2 * i == steps) {
                afterSecond = heel;
            }
        }
        return new GustSwing(afterSecond, now.pose().roll(), limit);
    }

    /** The target's state with its crew where they balance it: a book does not hold their place. */
    private static @Nullable SailingState withCrew(Platform platform, TargetPoint point) {
        SailingState shown = point.state();
        Map<Variable, Double> trim = new EnumMap<>(Variable.class);
        for (Variable variable : new Variable[] {Variable.CAMBER, Variable.TWIST, Variable.TWIST_MID_RATIO}) {
            trim.put(variable, shown.get(variable));
        }
        Balance found =
                new TargetFinder(platform, Map.of()).bestNear(point.branch(), point.trueWindSpeed(), shown, trim);
        return found == null ? null : found.state();
    }

    /** Wind from starboard, the leeward foil to port. */
    private static MotionState start(MotionModel model, SailingState state) {
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
        Pose pose = new Pose(0, 0, height, Angles.compass(WIND_FROM - state.trueWindAngleToBow()), roll, pitch);
        Rates rates = new Rates(speed * StrictMath.cos(leeway), -speed * StrictMath.sin(leeway), 0, 0, 0, 0);
        return new MotionState(pose, rates, controls);
    }
}
