package trimwright.practice;

import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;
import trimwright.air.WindProfile;
import trimwright.boat.WingSpec;
import trimwright.crew.Sight;
import trimwright.motion.BoatView;
import trimwright.motion.LocalWind;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.units.Angles;
import trimwright.weather.AirColumn;
import trimwright.weather.AirVelocity;
import trimwright.weather.GustColumn;
import trimwright.weather.MovingAir;

/** What the crew sees, step by step; its idea of the true wind settles over some seconds. */
public final class Watch {
    /** Time over which that idea settles (s): chosen, as in the simulated races. */
    private static final double WIND_TIME = 3;

    /** Height at which the wind meets the wing as a whole (m): chosen, as in the simulated races. */
    private static final double WING_HEIGHT = 10;

    private final MotionModel model;
    private final WingSpec wing;
    private final MovingAir field;
    private double north;
    private double east;
    private AirVelocity air;
    private GustColumn gusts = GustColumn.ALIKE;

    /** @param first state in which the looking begins, at time 0 */
    public Watch(MotionModel model, WingSpec wing, MovingAir field, MotionState first) {
        this.model = model;
        this.wing = wing;
        this.field = field;
        air = field.at(first.pose().north(), first.pose().east(), 0);
        north = air.north();
        east = air.east();
    }

    private Watch(MotionModel model, WingSpec wing, MovingAir field, double north, double east) {
        this.model = model;
        this.wing = wing;
        this.field = field;
        this.north = north;
        this.east = east;
        air = new AirVelocity(north, east);
    }

    /** Looks; {@link #wind} then is the wind of the same instant. */
    public Sight look(MotionState state, double time, double dt) {
        BoatView view = model.view(state);
        double placeNorth = view.north(wing.x(), 0, -WING_HEIGHT);
        double placeEast = view.east(wing.x(), 0, -WING_HEIGHT);
        AirColumn column = field.column(placeNorth, placeEast, time);
        air = column.air();
        gusts = column.gusts();
        double share = dt / WIND_TIME;
        north += share * (air.north() - north);
        east += share * (air.east() - east);
        double angle = Angles.signed(air.from() - state.pose().heading());
        ApparentWind felt = new TrueWind(air.speed(), angle)
                .apparent(state.rates().surge(), state.rates().sway());
        return new Sight(
                time,
                state,
                model.loads(),
                view.rideHeight(),
                StrictMath.hypot(north, east),
                StrictMath.atan2(-east, -north),
                new Sight.Felt(felt.speed(), felt.angle()));
    }

    /** One that goes on from here by itself, on a copy of the model. */
    public Watch copy(MotionModel of) {
        Watch other = new Watch(of, wing, field, north, east);
        other.air = air;
        other.gusts = gusts;
        return other;
    }

    /** The wind that the boat met at the last look. */
    public LocalWind wind() {
        double speed = Math.max(0.5, air.speed());
        return new LocalWind(
                WindProfile.overSea(speed), air.north() / speed, air.east() / speed, gusts::north, gusts::east);
    }
}
