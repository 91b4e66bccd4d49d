package trimwright.practice;

import org.jspecify.annotations.Nullable;
import trimwright.crew.Aim;
import trimwright.crew.ComputedHand;
import trimwright.crew.DrillCrew;
import trimwright.crew.Habits;
import trimwright.crew.HelmOrder;
import trimwright.crew.Sight;
import trimwright.crew.TurnConduct;
import trimwright.crew.WingHand;
import trimwright.motion.Commands;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.weather.Sea;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WaveSpec;
import trimwright.weather.WeatherSpec;
import trimwright.weather.WindField;

/**
 * A drill being sailed, step by step. She begins near her target with the computed hand at the wing, which gives it over
 * when the drill begins. Not for several threads at once.
 */
public final class DrillRun {
    /** Step (s). */
    public static final double STEP = MotionModel.STEP;

    /** Time that the computed hand has to settle her (s): chosen. */
    public static final double SETTLING = 12;

    /** Share of the card's speed with which she begins (-): chosen. */
    private static final double SPEED = 0.9;

    /** Strips of the wing: as in the simulated races. */
    private static final int STRIPS = 16;

    private final DrillSetup setup;
    private final MotionModel model;
    private final DrillCrew crew;
    private final Watch watch;
    private final Tally tally;
    private final @Nullable TurnConduct conduct;
    private @Nullable HelmOrder told;
    private MotionState state;
    private long steps;

    /** @param hand that has the wing from the drill's beginning */
    public DrillRun(DrillSetup setup, WingHand hand) {
        this(setup, hand, null);
    }

    /**
     * @param hand that has the wing from the drill's beginning
     * @param conduct of driver and flight controller from each word on until the turn is over; null for the usual one
     */
    public DrillRun(DrillSetup setup, WingHand hand, @Nullable TurnConduct conduct) {
        this.setup = setup;
        this.conduct = conduct;
        Drill drill = setup.drill();
        WeatherSpec weather = new WeatherSpec(
                setup.wind(),
                /* from= */ 0,
                /* height= */ 10,
                drill.intensity(),
                TurbulenceSpectrum.KAIMAL,
                drill.swing(),
                /* surge= */ drill.puffs() / 3,
                drill.puffs());
        WindField field = new WindField(weather, setup.seed());
        model = new MotionModel(setup.boat(), setup.wing(), setup.air(), setup.water(), STRIPS);
        state = FirstState.onTheFoils(
                model, setup.boat(), setup.aims(), setup.wind(), drill.angle(setup.aims(), setup.wind()), SPEED);
        WaveSpec waves = setup.waves();
        watch = new Watch(model, setup.wing(), field, waves == null ? null : new Sea(waves, setup.seed()), state);
        WingHand settling = new ComputedHand(setup.wing(), Habits.NONE, 1);
        crew = new DrillCrew(
                setup.boat(), setup.aims(), new HandOver(settling, hand, SETTLING), drill.orderAt(-SETTLING));
        tally = new Tally(setup.boat(), setup.wing(), drill, drill.startTask(setup.aims(), setup.wind()));
    }

    /** Sails one step and tells how things stood at its beginning. */
    public DrillMoment step() {
        double time = steps * STEP;
        double since = time - SETTLING;
        Sight sight = watch.look(state, time, STEP);
        tell(setup.drill().orderAt(since));
        Commands commands = crew.work(sight, STEP);
        double progress = crew.progress(sight);
        double best = crew.bestProgress(sight);
        boolean slides = model.isVentilated();
        if (since >= 0 && !isOver()) {
            tally.add(since, sight, slides, progress, best, STEP);
        }
        state = model.step(state, commands, watch.around(), STEP);
        steps++;
        Aim aim = crew.aim();
        return new DrillMoment(
                since,
                sight,
                aim == null ? setup.aims().at(sight.windSpeed(), crew.bestAngle(sight)) : aim,
                progress,
                best,
                tally.lost(),
                tally.toGun(since),
                tally.toLine(),
                crew.turning(),
                slides);
    }

    private void tell(HelmOrder order) {
        if (order.equals(told)) {
            return;
        }
        crew.tell(order);
        if (told != null && conduct != null) {
            crew.conduct(conduct);
        }
        told = order;
    }

    /** Whether its length is sailed, or she has capsized. */
    public boolean isOver() {
        return steps * STEP - SETTLING >= setup.drill().seconds() || tally.isOver();
    }

    /** What was made of it so far. */
    public DrillResult result() {
        return tally.result();
    }

    /** A whole drill with a computed hand. */
    public static DrillResult sail(DrillSetup setup, WingHand hand) {
        DrillRun run = new DrillRun(setup, hand);
        while (!run.isOver()) {
            run.step();
        }
        return run.result();
    }
}
