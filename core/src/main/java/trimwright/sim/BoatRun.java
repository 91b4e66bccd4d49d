package trimwright.sim;

import java.util.ArrayList;
import java.util.List;
import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.course.PlanePoint;
import trimwright.crew.Crew;
import trimwright.crew.DoneTurn;
import trimwright.crew.Habits;
import trimwright.crew.OtherBoat;
import trimwright.crew.Sight;
import trimwright.crew.Turning;
import trimwright.motion.BoatView;
import trimwright.motion.Commands;
import trimwright.motion.Controls;
import trimwright.motion.LocalWind;
import trimwright.motion.Mishap;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.units.Angles;
import trimwright.weather.AirColumn;
import trimwright.weather.AirVelocity;
import trimwright.weather.GaussianWake;
import trimwright.weather.GustColumn;
import trimwright.weather.WakeTrail;
import trimwright.weather.WindField;

/**
 * One boat's day: motion, crew, instruments and truth, stepped together. Needs nothing of other boats but the {@link Fleet}
 * of the block, so that boats of one block may run in any order or at once.
 */
public final class BoatRun {
    /** Strips of the wing: chosen, the force is within half a per cent of that of 40. */
    private static final int STRIPS = 16;

    /** Time over which a crew's idea of the true wind settles (s): chosen. */
    private static final double WIND_TIME = 3;

    private static final PlanePoint AWAY = new PlanePoint(1e6, 1e6);

    /** Time after the finish at which a boat leaves the course and its loggers are switched off (s): chosen. */
    private static final double AFTER_FINISH = 20;

    private final Entry entry;
    private final int index;
    private final WindField field;
    private final Boat boat;
    private final WingSpec wing;
    private final double bowX;
    private final double growth;
    private final AirVelocity meanWind;
    private final MotionModel model;
    private final Crew crew;
    private final Instruments instruments;
    private final double step;
    private final List<Reading> readings = new ArrayList<>();
    private final List<TrueState> truth = new ArrayList<>();
    private final Gauges gauges;
    private final WakeLaid wakeLaid;
    private final SpanLog straight = new SpanLog();
    private final SpanLog offFoil = new SpanLog();
    private final long seed;

    private MotionState state;
    private long steps;
    private double windNorth;
    private double windEast;
    private AirVelocity wakes = new AirVelocity(0, 0);

    BoatRun(Scenario scenario, int index, Venue venue, WindField field, double step) {
        this.index = index;
        this.field = field;
        this.step = step;
        entry = scenario.entries().get(index);
        seed = scenario.seed();
        boat = entry.perturbation().of(venue.boat());
        wing = boat.getWing(venue.wing());
        // Rudders hang at the sterns, so the bows are a boat's length before them.
        bowX = boat.hulls().lengthOverall() + boat.rudder().x();
        growth = GaussianWake.growth(scenario.weather().intensity());
        double from = scenario.weather().from();
        meanWind = new AirVelocity(
                -scenario.weather().speed() * StrictMath.cos(from),
                -scenario.weather().speed() * StrictMath.sin(from));
        model = new MotionModel(boat, wing, venue.air(), venue.water(), STRIPS);
        gauges = new Gauges(boat, wing, venue.air(), bowX);
        wakeLaid = new WakeLaid(wing, venue.air());
        instruments = new Instruments(entry.faults(), Race.READING, scenario.seed(), entry.name());
        state = new Approach(venue, boat, entry.temper()).state(model, from);
        AirVelocity air = field.at(state.pose().north(), state.pose().east(), 0);
        windNorth = air.north();
        windEast = air.east();
        int tack = Angles.signed(from - state.pose().heading()) >= 0 ? 1 : -1;
        crew = new Crew(
                boat,
                wing,
                venue.aims(),
                venue.course(),
                entry.habits(),
                entry.temper(),
                scenario.turning(),
                tack,
                venue.gun());
    }

    private BoatRun(BoatRun of, long seed, Habits habits, Turning turning) {
        index = of.index;
        field = of.field;
        step = of.step;
        entry = of.entry;
        boat = of.boat;
        wing = of.wing;
        bowX = of.bowX;
        growth = of.growth;
        meanWind = of.meanWind;
        gauges = of.gauges;
        this.seed = seed;
        model = of.model.copy();
        crew = of.crew.copy(habits, turning);
        wakeLaid = of.wakeLaid.anew();
        instruments = new Instruments(of.entry.faults(), Race.READING, seed, of.entry.name());
        state = of.state;
        steps = of.steps;
        windNorth = of.windNorth;
        windEast = of.windEast;
        wakes = of.wakes;
    }

    /**
     * A run that goes on from here as this one stands, from now on with those habits and that way of turning. Its readings,
     * truth, spans and wake begin here, its instruments' noise with the day's.
     */
    public BoatRun branch(Habits habits, Turning turning) {
        return new BoatRun(this, seed, habits, turning);
    }

    /** Whether the crew is at a turn or prepares one. */
    public boolean isAtTurn() {
        return crew.isAtTurn();
    }

    /** Sails on until a time (s); boats and wakes of others stand as the fleet says. */
    public void advance(Fleet fleet, double until) {
        while (time() < until - 1e-9 && !hasLeft()) {
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

    /** Straight sailing and time off the foils, as ordered and as it was; turns are in {@link #turns}. */
    public List<TrueSpan> spans() {
        List<TrueSpan> spans = new ArrayList<>(straight.until(time()));
        spans.addAll(offFoil.until(time()));
        return spans;
    }

    public boolean hasFinished() {
        return crew.hasFinished();
    }

    /** Whether she has finished and left the course, or lies in the water; nothing moves or is logged from then on. */
    public boolean hasLeft() {
        if (Mishap.of(state.pose()) != null) {
            return true;
        }
        List<Double> passages = crew.passages();
        return crew.hasFinished() && time() > passages.get(passages.size() - 1) + AFTER_FINISH;
    }

    /** Steps in which the wing's equations had no answer and its last force was kept. */
    public int unsolvedSteps() {
        return model.unsolvedSteps();
    }

    /** How others see her; far away once she has left. */
    OtherBoat seen() {
        if (hasLeft()) {
            return new OtherBoat(AWAY, 0, 0, 1);
        }
        BoatView view = model.view(state);
        double north = view.velocityNorth(bowX, 0, 0);
        double east = view.velocityEast(bowX, 0, 0);
        double from = StrictMath.atan2(-windEast, -windNorth);
        return new OtherBoat(
                bow(view),
                StrictMath.atan2(east, north),
                StrictMath.hypot(north, east),
                Angles.signed(from - state.pose().heading()) >= 0 ? 1 : -1);
    }

    WakeTrail wake() {
        return wakeLaid.trail();
    }

    /** How long she has been sailed (s). */
    public double time() {
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
        AirColumn column = field.column(north, east, time);
        AirVelocity free = column.air();
        AirVelocity air = free.plus(wakes);
        double share = step / WIND_TIME;
        windNorth += share * (air.north() - windNorth);
        windEast += share * (air.east() - windEast);
        GustColumn gusts = column.gusts();
        LocalWind wind = LocalWind.moving(air.north(), air.east(), gusts::north, gusts::east);
        Sight sight = sight(view, time, air);
        if (reads) {
            readings.add(instruments.read(gauges.read(state, model.loads(), view, wind, time)));
        }
        if (isTime(1)) {
            truth.add(trueState(view, time, free, air));
        }
        if (isTime(Race.BLOCK)) {
            wakeLaid.add(state, model.loads(), view, time, air);
        }
        noteSpans(time);
        Commands commands = crew.work(sight, bow(view), others(fleet), step);
        state = crew.isMirrored()
                ? model.mirrored(state, StrictMath.atan2(-windEast, -windNorth))
                : model.step(state, commands, wind, step);
        steps++;
    }

    private void noteSpans(double time) {
        int tack = Angles.signed(StrictMath.atan2(-windEast, -windNorth)
                                - state.pose().heading())
                        >= 0
                ? 1
                : -1;
        boolean racing = crew.leg() >= 0 && !crew.hasFinished();
        straight.note(
                time,
                racing && crew.turning() == null
                        ? new TrueSpan(time, time, "straight", crew.sailing(), "", crew.leg(), tack)
                        : null);
        offFoil.note(
                time,
                model.loads().hullLift() > 0 ? new TrueSpan(time, time, "off_foil", "", "", crew.leg(), 0) : null);
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
                StrictMath.hypot(windNorth, windEast),
                StrictMath.atan2(-windEast, -windNorth),
                new Sight.Felt(felt.speed(), felt.angle()));
    }

    private ApparentWind felt(AirVelocity air) {
        double angle = Angles.signed(air.from() - state.pose().heading());
        return new TrueWind(air.speed(), angle)
                .apparent(state.rates().surge(), state.rates().sway());
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
}
