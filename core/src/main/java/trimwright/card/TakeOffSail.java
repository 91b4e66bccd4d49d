package trimwright.card;

import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;
import trimwright.boat.Boat;
import trimwright.motion.Commands;
import trimwright.motion.Controls;
import trimwright.motion.LocalWind;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.units.Angles;
import trimwright.water.WaterState;

/**
 * Sails one take-off in time by a simple schedule: from the target on the hulls turn to an angle and gather speed, rise when the
 * leeward foil carries most of her, turn to the target on the foils and trim as it says. The windward foil stays up. Steady wind,
 * flat water; not the simulated crew of the race, who take off with both foils down.
 */
final class TakeOffSail {
    /** Longest that is waited (s): chosen. */
    private static final double PATIENCE = 90;

    /** Share of the target's speed with which the take-off counts as done (-): as for turns. */
    private static final double NEARLY = 0.95;

    /** Heading off the target's with which it counts as done (rad): chosen, three degrees. */
    private static final double THERE = Math.PI / 60;

    /** Rate of turn to the angle of gathering and from it, and of the rake on the hulls (rad/s): chosen, four degrees a second. */
    private static final double TURN = Math.PI / 45;

    /** Rake over that with which the balance leaves the water, for less speed (rad): chosen, a degree. */
    private static final double MORE_RAKE = Math.PI / 180;

    /**
     * Share of her weight on the leeward foil, and of the turn to the angle, from which the height is asked for (-), or of the speed
     * with which the balance leaves the water: chosen.
     */
    private static final double RISE_AT = 0.6;

    private static final double RISE_SPEED = 0.97;

    /** Rate at which the height asked for grows (m/s), and how far below her it stays at least (m): the simulated crew's. */
    private static final double RISE = 0.3;

    private static final double BELOW = 0.3;

    /** Ride height at which she counts as up (m): chosen, a hand's breadth of air. */
    private static final double UP = 0.1;

    /** Share of the target's ride height from which she turns to the target (-): chosen. */
    private static final double SETTLED = 0.6;

    private final Platform platform;
    private final AirState air;
    private final WaterState water;
    private final double wind;
    private final SailingState onHulls;
    private final SailingState onFoils;
    private final double way;

    /**
     * @param wind true wind speed at 10 m (m/s)
     * @param onHulls target on the hulls, crew placed
     * @param onFoils target on the foils, crew placed
     */
    TakeOffSail(
            Platform platform,
            AirState air,
            WaterState water,
            double wind,
            SailingState onHulls,
            SailingState onFoils) {
        this.platform = platform;
        this.air = air;
        this.water = water;
        this.wind = wind;
        this.onHulls = onHulls;
        this.onFoils = onFoils;
        way = StrictMath.cos(onFoils.get(Variable.TRUE_WIND_ANGLE)) >= 0 ? 1 : -1;
    }

    /**
     * One take-off.
     *
     * @param gather state on the foils at the angle to gather speed at, crew placed
     * @param lift how the balance has her leave the water there
     * @return null where she does not come to the target within {@link #PATIENCE}
     */
    @Nullable
    TakeOffPath by(SailingState gather, SailingState lift) {
        Boat boat = platform.boat();
        MotionModel model = new MotionModel(boat, platform.wing(), air, water, MotionStart.STRIPS);
        MotionState now = MotionStart.of(model, onHulls);
        LocalWind local = LocalWind.of(wind, MotionStart.WIND_FROM);
        SteadyHands hands = new SteadyHands(boat, now.controls());
        TakeOffTrimmer trimmer = new TakeOffTrimmer(
                platform.wing().trim(), boat.rudder().elevatorAngleMax(), wind, onHulls, lift, gather, onFoils);
        double dt = MotionModel.STEP;
        double heading = now.pose().heading();
        double height = onHulls.get(Variable.RIDE_HEIGHT);
        TakeOffPath.Up up = null;
        boolean rising = false;
        boolean settling = false;
        double behind = 0;
        double most = 0;
        for (double time = 0; time < PATIENCE; time += dt) {
            double ride = model.view(now).rideHeight();
            double turned = turned(now, onHulls, gather);
            rising |= turned > RISE_AT
                    && (model.loads().portMain() > RISE_AT * platform.weight()
                            || now.rates().speed() > RISE_SPEED * lift.get(Variable.BOAT_SPEED));
            settling |= ride > SETTLED * onFoils.get(Variable.RIDE_HEIGHT);
            up = up == null && ride > UP ? up(time, now) : up;
            double turn = Angles.difference(MotionStart.heading(settling ? onFoils : gather), heading);
            heading += Math.max(-TURN * dt, Math.min(TURN * dt, turn));
            height = rising
                    ? Math.min(onFoils.get(Variable.RIDE_HEIGHT), Math.max(height, ride - BELOW) + RISE * dt)
                    : ride;
            double rake =
                    rising ? hands.rake(now, ride, height, dt) : hands.rakeToward(rakeOnHulls(lift, turned), TURN, dt);
            trimmer.work(
                    now,
                    new TakeOffTrimmer.Feel(
                            ride,
                            felt(now),
                            model.loads().stallMargin(),
                            turned,
                            settling ? turned(now, gather, onFoils) : Double.NaN),
                    dt);
            Controls asked = new Controls(
                    trimmer.sheet(),
                    trimmer.camber(),
                    trimmer.twist(),
                    onFoils.get(Variable.TWIST_MID_RATIO),
                    rake,
                    now.controls().starboardRake(),
                    hands.elevator(now, trimmer.pitch(), dt),
                    trimmer.differential(),
                    hands.rudder(now, heading, dt),
                    /* portBoard= */ 1,
                    /* starboardBoard= */ 0,
                    trimmer.crew());
            now = model.step(now, new Commands(asked, Commands.FlapWork.TRIM), local, dt);
            behind += (madeGood(onHulls) - madeGood(now)) * dt;
            most = Math.max(most, behind);
            if (up != null && settling && isThere(now)) {
                return new TakeOffPath(gather.get(Variable.TRUE_WIND_ANGLE), up, time, most, paysAfter(time, behind));
            }
        }
        return null;
    }

    private double rakeOnHulls(SailingState lift, double turned) {
        double from = onHulls.get(Variable.MAIN_RAKE);
        return from + turned * (lift.get(Variable.MAIN_RAKE) + MORE_RAKE - from);
    }

    private static TakeOffPath.Up up(double time, MotionState now) {
        return new TakeOffPath.Up(
                time,
                now.rates().speed(),
                now.controls().camber(),
                now.controls().twist(),
                now.controls().sheet());
    }

    private boolean isThere(MotionState now) {
        double off = Angles.difference(MotionStart.heading(onFoils), now.pose().heading());
        return Math.abs(off) < THERE && now.rates().speed() > NEARLY * onFoils.get(Variable.BOAT_SPEED);
    }

    /** What she is behind is won back at the difference of the two targets. */
    private double paysAfter(double time, double behind) {
        double gain = madeGood(onFoils) - madeGood(onHulls);
        if (behind <= 0) {
            return time;
        }
        return gain > 0 ? time + behind / gain : Double.POSITIVE_INFINITY;
    }

    /** Share of the turn from one state's heading to another's (-), 0 to 1. */
    private static double turned(MotionState now, SailingState from, SailingState to) {
        double whole = Angles.difference(MotionStart.heading(to), MotionStart.heading(from));
        double part = Angles.difference(now.pose().heading(), MotionStart.heading(from));
        return Math.abs(whole) < 1e-6 ? 1 : Math.max(0, Math.min(1, part / whole));
    }

    /** Made good along the wind (m/s), positive toward where the target goes. */
    private double madeGood(SailingState state) {
        return way * state.get(Variable.BOAT_SPEED) * StrictMath.cos(state.get(Variable.TRUE_WIND_ANGLE));
    }

    private double madeGood(MotionState now) {
        double heading = now.pose().heading() - MotionStart.WIND_FROM;
        return way
                * (now.rates().surge() * StrictMath.cos(heading) - now.rates().sway() * StrictMath.sin(heading));
    }

    private ApparentWind felt(MotionState now) {
        double angle = Angles.signed(MotionStart.WIND_FROM - now.pose().heading());
        return new TrueWind(wind, angle)
                .apparent(now.rates().surge(), now.rates().sway());
    }
}
