package trimwright.sim;

import java.util.ArrayList;
import java.util.List;
import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;
import trimwright.air.WindProfile;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.course.PlaneLine;
import trimwright.course.PlanePoint;
import trimwright.crew.Crew;
import trimwright.crew.DoneTurn;
import trimwright.crew.OtherBoat;
import trimwright.crew.Sight;
import trimwright.motion.BoatView;
import trimwright.motion.Controls;
import trimwright.motion.LocalWind;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.motion.Pose;
import trimwright.motion.Rates;
import trimwright.units.Angles;
import trimwright.weather.AirVelocity;
import trimwright.weather.GaussianWake;
import trimwright.weather.WakeSection;
import trimwright.weather.WakeTrail;
import trimwright.weather.WindField;
import trimwright.wing.Wing;

/**
 * One boat's day: motion, crew, instruments and truth, stepped together. Needs nothing of other boats but the {@link Fleet}
 * of the block, so that boats of one block may run in any order or at once.
 */
public final class BoatRun {
    /** Strips of the wing: chosen, the force is within half a per cent of that of 40. */
    private static final int STRIPS = 16;

    /** Time over which a crew's idea of the true wind settles (s): chosen. */
    private static final double WIND_TIME = 3;

    private static final double APPROACH = 10.5;
    private static final int WAKE_SECTIONS = 90;

    private final Entry entry;
    private final int index;
    private final Venue venue;
    private final WindField field;
    private final Boat boat;
    private final WingSpec wing;
    private final double wingArea;
    private final double bowX;
    private final double growth;
    private final AirVelocity meanWind;
    private final MotionModel model;
    private final Crew crew;
    private final Instruments instruments;
    private final double step;
    private final List<Reading> readings = new ArrayList<>();
    private final List<TrueState> truth = new ArrayList<>();
    private final List<WakeSection> trail = new ArrayList<>();

    private MotionState state;
    private long steps;
    private double windNorth;
    private double windEast;
    private AirVelocity wakes = new AirVelocity(0, 0);

    BoatRun(Scenario scenario, int index, Venue venue, WindField field, double step) {
        this.index = index;
        this.venue = venue;
        this.field = field;
        this.step = step;
        entry = scenario.entries().get(index);
        boat = entry.perturbation().of(venue.boat());
        wing = boat.getWing(venue.wing());
        wingArea = Wing.area(wing);
        // Rudders hang at the sterns, so the bows are a boat's length before them.
        bowX = boat.hulls().lengthOverall() + boat.rudder().x();
        growth = GaussianWake.growth(scenario.weather().intensity());
        double from = scenario.weather().from();
        meanWind = new AirVelocity(
                -scenario.weather().speed() * Math.cos(from),
                -scenario.weather().speed() * Math.sin(from));
        model = new MotionModel(boat, wing, venue.air(), venue.water(), STRIPS);
        instruments = new Instruments(entry.faults(), Race.READING, scenario.seed(), entry.name());
        state = atTheStart(from);
        AirVelocity air = field.at(state.pose().north(), state.pose().east(), 0);
        windNorth = air.north();
        windEast = air.east();
        int tack = Angles.signed(from - state.pose().heading()) >= 0 ? 1 : -1;
        crew = new Crew(boat, wing, venue.aims(), venue.course(), entry.habits(), entry.temper(), tack, venue.gun());
    }

    /** Sails on until a time (s); boats and wakes of others stand as the fleet says. */
    void advance(Fleet fleet, double until) {
        while (time() < until - 1e-9) {
            sailOneStep(fleet);
        }
    }

    public Entry entry() {
        return entry;
    }

    /** Every tenth of a second. */
    public List<Reading> readings() {
        return List.copyOf(readings);
    }

    /** Every second. */
    public List<TrueState> truth() {
        return List.copyOf(truth);
    }

    public List<DoneTurn> turns() {
        return crew.turns();
    }

    /** Times of crossing the start and of ending each leg (s). */
    public List<Double> passages() {
        return crew.passages();
    }

    public boolean hasFinished() {
        return crew.hasFinished();
    }

    /** Steps in which the wing's equations had no answer and its last force was kept. */
    public int unsolvedSteps() {
        return model.unsolvedSteps();
    }

    OtherBoat seen() {
        BoatView view = model.view(state);
        double north = view.velocityNorth(bowX, 0, 0);
        double east = view.velocityEast(bowX, 0, 0);
        double from = StrictMath.atan2(-windEast, -windNorth);
        return new OtherBoat(
                bow(view),
                StrictMath.atan2(east, north),
                Math.hypot(north, east),
                Angles.signed(from - state.pose().heading()) >= 0 ? 1 : -1);
    }

    WakeTrail wake() {
        return new WakeTrail(trail);
    }

    private double time() {
        return steps * step;
    }

    private void sailOneStep(Fleet fleet) {
        double time = time();
        BoatView view = model.view(state);
        double north = view.north(wing.x(), 0, -10);
        double east = view.east(wing.x(), 0, -10);
        boolean reads = isTime(Race.READING);
        if (reads) {
            wakes = wakesOfOthers(fleet, north, east, time);
        }
        AirVelocity free = field.at(north, east, time);
        AirVelocity air = free.plus(wakes);
        double share = step / WIND_TIME;
        windNorth += share * (air.north() - windNorth);
        windEast += share * (air.east() - windEast);
        double speed = Math.max(0.5, air.speed());
        LocalWind wind = new LocalWind(WindProfile.overSea(speed), air.north() / speed, air.east() / speed);
        Sight sight = sight(view, time, air);
        if (reads) {
            readings.add(instruments.read(moment(view, wind, time)));
        }
        if (isTime(1)) {
            truth.add(trueState(view, time, free, air));
        }
        if (isTime(Race.BLOCK)) {
            layWake(view, time, air, north, east);
        }
        state = model.step(state, crew.work(sight, bow(view), others(fleet), step), wind, step);
        steps++;
    }

    private boolean isTime(double period) {
        return steps % Math.round(period / step) == 0;
    }

    private PlanePoint bow(BoatView view) {
        return new PlanePoint(view.north(bowX, 0, -0.5), view.east(bowX, 0, -0.5));
    }

    private List<OtherBoat> others(Fleet fleet) {
        List<OtherBoat> others = new ArrayList<>(fleet.boats());
        if (index < others.size()) {
            others.remove(index);
        }
        return others;
    }

    private AirVelocity wakesOfOthers(Fleet fleet, double north, double east, double time) {
        AirVelocity sum = new AirVelocity(0, 0);
        for (int i = 0; i < fleet.wakes().size(); i++) {
            if (i != index) {
                sum = sum.plus(fleet.wakes().get(i).at(north, east, time, meanWind, growth));
            }
        }
        return sum;
    }

    private Sight sight(BoatView view, double time, AirVelocity air) {
        ApparentWind felt = felt(air);
        return new Sight(
                time,
                state,
                model.loads(),
                view.rideHeight(),
                Math.hypot(windNorth, windEast),
                StrictMath.atan2(-windEast, -windNorth),
                new Sight.Felt(felt.speed(), felt.angle()));
    }

    private ApparentWind felt(AirVelocity air) {
        double angle = Angles.signed(air.from() - state.pose().heading());
        return new TrueWind(air.speed(), angle)
                .apparent(state.rates().surge(), state.rates().sway());
    }

    private Moment moment(BoatView view, LocalWind wind, double time) {
        double ax = bowX - boat.antenna().aftOfBow();
        double ay = boat.antenna().starboard();
        double az = -boat.crew().height();
        double sx = boat.windSensor().x();
        double sz = -boat.windSensor().height();
        Controls controls = state.controls();
        double ahead = view.windFromAhead(wind, sx, 0, sz);
        double abeam = view.windFromStarboard(wind, sx, 0, sz);
        double pressure = 0.5 * venue.air().density() * (ahead * ahead + abeam * abeam) * wingArea;
        double turning = model.loads().turningMoment();
        boolean taut = turning * controls.sheet() > 0;
        return new Moment(
                time,
                view.north(ax, ay, az),
                view.east(ax, ay, az),
                view.velocityNorth(ax, ay, az),
                view.velocityEast(ax, ay, az),
                state.pose().heading(),
                state.rates().yaw(),
                state.pose().roll(),
                state.pose().pitch(),
                ahead,
                abeam,
                boat.windSensor().turnsWithWing() ? controls.sheet() : 0,
                -model.loads().wingStarboard() / Math.max(pressure, 1),
                controls.camber(),
                controls.twist(),
                controls.sheet(),
                taut ? Math.abs(turning) / wing.sheet().lever() : 0,
                view.rideHeight());
    }

    private TrueState trueState(BoatView view, double time, AirVelocity free, AirVelocity air) {
        PlanePoint bow = bow(view);
        Controls controls = state.controls();
        int tack = Angles.signed(air.from() - state.pose().heading()) >= 0 ? 1 : -1;
        return new TrueState(
                time,
                bow.north(),
                bow.east(),
                air.speed(),
                Angles.compass(air.from()),
                free.speed() - air.speed(),
                state.rates().speed(),
                state.pose().heading(),
                -tack
                        * StrictMath.atan2(
                                state.rates().sway(),
                                Math.max(0.1, state.rates().surge())),
                state.pose().roll(),
                view.rideHeight(),
                model.loads().hullLift() <= 0 ? 1 : 0,
                controls.sheet(),
                controls.camber(),
                controls.twist(),
                model.loads().heeling(),
                crew.leg(),
                crew.turning() == null ? 0 : 1);
    }

    private void layWake(BoatView view, double time, AirVelocity air, double north, double east) {
        double flowNorth = air.north() - view.velocityNorth(wing.x(), 0, -10);
        double flowEast = air.east() - view.velocityEast(wing.x(), 0, -10);
        double speed = Math.hypot(flowNorth, flowEast);
        if (speed < 1) {
            return;
        }
        double towards = StrictMath.atan2(flowEast, flowNorth);
        double heading = state.pose().heading();
        double fx = model.loads().wingForward();
        double fy = model.loads().wingStarboard();
        double forceNorth = fx * Math.cos(heading) - fy * Math.sin(heading);
        double forceEast = fx * Math.sin(heading) + fy * Math.cos(heading);
        double pressure = 0.5 * venue.air().density() * speed * speed;
        double drag = forceNorth * Math.cos(towards) + forceEast * Math.sin(towards);
        double lift = -forceNorth * Math.sin(towards) + forceEast * Math.cos(towards);
        trail.add(new WakeSection(
                time,
                north,
                east,
                speed,
                towards,
                Math.max(0, drag / pressure),
                lift / pressure,
                wingArea,
                wing.footHeight() + wing.span()));
        if (trail.size() > WAKE_SECTIONS) {
            trail.remove(0);
        }
    }

    /** Flying already, on her lane, as far from the line as she sails until the gun. */
    private MotionState atTheStart(double windFrom) {
        PlaneLine line = venue.course().start();
        double share = entry.temper().startShare();
        double heading = Angles.compass(line.portEnd().bearingTo(line.starboardEnd()) - Math.PI / 2);
        double back = APPROACH * (venue.gun() + entry.temper().startMargin());
        double north = line.portEnd().north()
                + share * (line.starboardEnd().north() - line.portEnd().north())
                - back * Math.cos(heading);
        double east = line.portEnd().east()
                + share * (line.starboardEnd().east() - line.portEnd().east())
                - back * Math.sin(heading);
        int tack = Angles.signed(windFrom - heading) >= 0 ? 1 : -1;
        double roll = tack * Math.toRadians(2);
        double out = tack * boat.crew().yMax();
        double height = model.heightFor(0.9, roll, 0, out);
        Controls controls = new Controls(
                tack * Math.toRadians(28),
                tack * Math.toRadians(16),
                tack * Math.toRadians(10),
                0.5,
                Math.toRadians(3),
                Math.toRadians(3),
                0,
                0,
                0,
                1,
                1,
                out);
        return new MotionState(
                new Pose(north, east, height, heading, roll, 0), new Rates(APPROACH, 0, 0, 0, 0, 0), controls);
    }
}
