package trimwright.practice;

import org.jspecify.annotations.Nullable;
import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;
import trimwright.boat.WingSpec;
import trimwright.crew.Sight;
import trimwright.motion.BoatView;
import trimwright.motion.LocalWind;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.motion.Surroundings;
import trimwright.units.Angles;
import trimwright.water.WaterMotion;
import trimwright.weather.AirColumn;
import trimwright.weather.AirVelocity;
import trimwright.weather.GustColumn;
import trimwright.weather.MovingAir;
import trimwright.weather.Sea;

/** What the crew sees, step by step; its idea of the true wind settles over some seconds. */
public final class Watch {
    /** Time over which that idea settles (s): chosen, as in the simulated races. */
    private static final double WIND_TIME = 3;

    /** Height at which the wind meets the wing as a whole (m): chosen, as in the simulated races. */
    private static final double WING_HEIGHT = 10;

    private final MotionModel model;
    private final WingSpec wing;
    private final MovingAir field;
    private final @Nullable Sea sea;
    private double north;
    private double east;
    private AirVelocity air;
    private GustColumn gusts = GustColumn.ALIKE;
    private double time;

    /** @param first state in which the looking begins, at time 0 */
    public Watch(MotionModel model, WingSpec wing, MovingAir field, MotionState first) {
        this(model, wing, field, null, first);
    }

    /** As above, on that sea; null on flat water. */
    public Watch(MotionModel model, WingSpec wing, MovingAir field, @Nullable Sea sea, MotionState first) {
        this.model = model;
        this.wing = wing;
        this.field = field;
        this.sea = sea;
        air = field.at(first.pose().north(), first.pose().east(), 0);
        north = air.north();
        east = air.east();
    }

    private Watch(MotionModel model, WingSpec wing, MovingAir field, @Nullable Sea sea, double north, double east) {
        this.model = model;
        this.wing = wing;
        this.field = field;
        this.sea = sea;
        this.north = north;
        this.east = east;
        air = new AirVelocity(north, east);
    }

    /** Looks; {@link #wind} then is the wind of the same instant. */
    public Sight look(MotionState state, double time, double dt) {
        this.time = time;
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
        Watch other = new Watch(of, wing, field, sea, north, east);
        other.air = air;
        other.gusts = gusts;
        other.time = time;
        return other;
    }

    /** Wind and water that the boat met at the last look. */
    public Surroundings around() {
        return new Surroundings(wind(), sea == null ? WaterMotion.STILL : sea.at(time));
    }

    /** The wind that the boat met at the last look. */
    public LocalWind wind() {
        return LocalWind.moving(air.north(), air.east(), gusts::north, gusts::east);
    }
}
