package trimwright.card;

import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.air.GustShape;
import trimwright.boat.Boat;
import trimwright.motion.Commands;
import trimwright.motion.Controls;
import trimwright.motion.LocalWind;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.TargetPoint;
import trimwright.water.WaterState;

/** Sails a boat at a foiling target through gusts, again and again from the same state. */
public final class GustWatch {
    /** A state that stands on a bound of heel may waver about it by rounding (rad): a tenth of a degree, under what is seen. */
    private static final double WAVER = Math.PI / 1800;

    /** From feeling a change to the hand's answer (s): middle of the published 0.25 to 0.4. */
    public static final double REACTION = 0.3;

    private final Platform platform;
    private final AirState air;
    private final WaterState water;
    private final TargetPoint point;
    private final SailingState state;

    private GustWatch(Platform platform, AirState air, WaterState water, TargetPoint point, SailingState state) {
        this.platform = platform;
        this.air = air;
        this.water = water;
        this.point = point;
        this.state = state;
    }

    /**
     * At a solved foiling target.
     *
     * @param platform of the target, in that air and water
     * @return null where the target's state is not found again with its crew
     */
    public static @Nullable GustWatch at(Platform platform, AirState air, WaterState water, TargetPoint point) {
        SailingState state = MotionStart.withCrew(platform, point);
        return state == null ? null : new GustWatch(platform, air, water, point, state);
    }

    /** At a balanced state of the platform in the wind of a foiling target, with its crew. */
    public static GustWatch at(
            Platform platform, AirState air, WaterState water, TargetPoint point, SailingState state) {
        return new GustWatch(platform, air, water, point, state);
    }

    /**
     * How long a shape of the standard takes to pass the boat (s): its length in the air over the wind that the boat feels; the
     * air's pattern stands still in the mean wind (Taylor), and is as long across as along: chosen.
     */
    public double length(GustShape shape) {
        double seconds = switch (shape) {
            case AT_ONCE -> 0;
            case COHERENT -> GustShape.COHERENT_SECONDS;
            case OPERATING -> GustShape.OPERATING_SECONDS;
        };
        return seconds * point.trueWindSpeed() / point.getTarget().apparentWindSpeed();
    }

    /**
     * One gust.
     *
     * @param change of the true wind speed (m/s)
     * @param shift of the wind with it (rad), positive aft
     * @param act what the trimmer does about it, in step with the gust but {@link #REACTION} late; null: nothing
     */
    public GustSwing swing(double change, double shift, GustShape shape, @Nullable GustAct act) {
        Boat boat = platform.boat();
        MotionModel model =
                new MotionModel(boat, platform.wing(), air, water, MotionStart.STRIPS, MotionModel.Lift.LAGGING);
        MotionState first = MotionStart.of(model, state);
        MotionState now = first;
        SteadyHands hands = new SteadyHands(boat, first.controls());
        double least = Math.min(boat.limits().heelMin(), state.get(Variable.HEEL)) - WAVER;
        double most = Math.max(boat.limits().heelMax(), state.get(Variable.HEEL)) + WAVER;
        double length = length(shape);
        double dt = MotionModel.STEP;
        int steps = (int) Math.round(Math.max(GustSwing.TOLD, length) / dt);
        double[] heel = new double[steps + 1];
        double before = Double.NaN;
        double mostMoment = Double.NEGATIVE_INFINITY;
        double leastHeel = first.pose().roll();
        double mostHeel = leastHeel;
        double margin = Double.POSITIVE_INFINITY;
        double limit = Double.POSITIVE_INFINITY;
        double gained = Double.NaN;
        for (int i = 1; i <= steps; i++) {
            double time = (i - 1) * dt;
            double share = shape.share(time, length);
            LocalWind wind =
                    LocalWind.of(point.trueWindSpeed() + share * change, MotionStart.WIND_FROM + share * shift);
            Commands commands = new Commands(
                    asked(hands, model, now, first, act, shape.share(time - REACTION, length)), Commands.FlapWork.TRIM);
            now = model.step(now, commands, wind, dt);
            double moment = -model.loads().heeling();
            before = i == 1 ? moment : before;
            mostMoment = Math.max(mostMoment, moment);
            margin = Math.min(margin, model.loads().stallMargin());
            heel[i] = now.pose().roll();
            leastHeel = Math.min(leastHeel, heel[i]);
            mostHeel = Math.max(mostHeel, heel[i]);
            if (Double.isInfinite(limit) && (change > 0 ? heel[i] < least : heel[i] > most)) {
                limit = i * dt;
            }
            if (i == Math.round(GustSwing.TOLD / dt)) {
                gained = now.rates().speed() - first.rates().speed();
            }
        }
        return new GustSwing(
                shape,
                length,
                heel[(int) Math.round(1 / dt)],
                heel[(int) Math.round(2 / dt)],
                heel[(int) Math.round(GustSwing.TOLD / dt)],
                gained,
                leastHeel,
                mostHeel,
                limit,
                mostMoment / before,
                margin);
    }

    private Controls asked(
            SteadyHands hands,
            MotionModel model,
            MotionState now,
            MotionState first,
            @Nullable GustAct act,
            double share) {
        Controls from = first.controls();
        double dt = MotionModel.STEP;
        double change = act == null ? 0 : act.change() * Math.max(0, share);
        Variable control = act == null ? Variable.SHEET : act.control();
        return new Controls(
                from.sheet() + (control == Variable.SHEET ? change : 0),
                from.camber() + (control == Variable.CAMBER ? change : 0),
                from.twist() + (control == Variable.TWIST ? change : 0),
                from.twistMid(),
                hands.rake(now, model.view(now).rideHeight(), state.get(Variable.RIDE_HEIGHT), dt),
                from.starboardRake(),
                hands.elevator(now, first.pose().pitch(), dt),
                from.differential(),
                hands.rudder(now, first.pose().heading(), dt),
                from.portBoard(),
                from.starboardBoard(),
                from.crew());
    }
}
