package trimwright.start;

import trimwright.crew.ComputedHand;
import trimwright.crew.DrillCrew;
import trimwright.crew.Habits;
import trimwright.crew.HelmOrder;
import trimwright.crew.Sight;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.practice.Bounds;
import trimwright.practice.FirstState;
import trimwright.practice.Watch;
import trimwright.units.Angles;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WeatherSpec;
import trimwright.weather.WindField;

/**
 * A boat before a start: holds a course on a share of its power and counts its way along the course across the line, which has the
 * wind from starboard. The same setup, seed and orders give the same way.
 */
final class StartBoat {
    private static final double STEP = MotionModel.STEP;
    private static final int STRIPS = 16;

    /** Share of the card's speed with which she begins (-): chosen. */
    private static final double SPEED = 0.95;

    private final StartSetup setup;
    private final MotionModel model;
    private final ComputedHand hand;
    private final DrillCrew crew;
    private final Watch watch;
    private MotionState state;
    private long steps;
    private double along;
    private double across;
    private double speed;
    private boolean touches;
    private boolean capsized;

    StartBoat(StartSetup setup, long seed) {
        this.setup = setup;
        WeatherSpec weather = new WeatherSpec(
                setup.wind(), /* from= */ 0, /* height= */ 10, setup.intensity(), TurbulenceSpectrum.KAIMAL, 0, 0, 0);
        model = new MotionModel(setup.boat(), setup.wing(), setup.air(), setup.water(), STRIPS);
        hand = new ComputedHand(setup.wing(), Habits.NONE, 1);
        crew = new DrillCrew(setup.boat(), setup.aims(), hand, HelmOrder.course(setup.angle(), 1));
        state = FirstState.onTheFoils(model, setup.boat(), setup.aims(), setup.wind(), setup.angle(), SPEED);
        speed = state.rates().speed();
        watch = new Watch(model, setup.wing(), new WindField(weather, seed), state);
    }

    private StartBoat(StartBoat of) {
        setup = of.setup;
        model = of.model.copy();
        hand = of.hand.copy();
        crew = of.crew.copy(hand);
        watch = of.watch.copy(model);
        state = of.state;
        steps = of.steps;
        along = of.along;
        across = of.across;
        speed = of.speed;
        touches = of.touches;
        capsized = of.capsized;
    }

    /** One that goes on from here by itself. */
    StartBoat copy() {
        return new StartBoat(this);
    }

    /** From now on that share of full power, across the line's course or off it by an angle (rad), positive away from the wind. */
    void order(double power, double off) {
        hand.power(power);
        crew.tell(HelmOrder.course(setup.angle() + off, 1));
    }

    /** From now on on the other tack, at the same angle from the wind. */
    void otherTack(double power) {
        hand.power(power);
        crew.tell(HelmOrder.course(setup.angle(), -1));
    }

    /** One step of {@link #STEP}; a boat that went over stays where she is. */
    void step() {
        if (capsized) {
            steps++;
            speed = 0;
            return;
        }
        Sight sight = watch.look(state, steps * STEP, STEP);
        state = model.step(state, crew.work(sight, STEP), watch.wind(), STEP);
        steps++;
        speed = sight.speed();
        touches = sight.loads().hullLift() > 0;
        capsized = Bounds.isCapsized(sight);
        // The mean wind comes from north.
        double off = Angles.signed(-sight.course()) - setup.angle();
        along += speed * StrictMath.cos(off) * STEP;
        across += speed * StrictMath.sin(off) * STEP;
    }

    void sail(double seconds) {
        long until = steps + Math.round(seconds / STEP);
        while (steps < until) {
            step();
        }
    }

    /** Time sailed (s). */
    double time() {
        return steps * STEP;
    }

    /** Way made along the course across the line (m). */
    double along() {
        return along;
    }

    /** Way made across that course, positive away from the wind (m). */
    double across() {
        return across;
    }

    /** Through the water (m/s). */
    double speed() {
        return speed;
    }

    /** Whether a hull carries weight. */
    boolean touches() {
        return touches;
    }

    boolean isCapsized() {
        return capsized;
    }
}
