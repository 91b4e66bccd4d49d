package trimwright.bench;

import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Setup;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.crew.ComputedHand;
import trimwright.crew.DrillCrew;
import trimwright.crew.Habits;
import trimwright.crew.HelmOrder;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.Sight;
import trimwright.crew.TurnKind;
import trimwright.drills.DrillBoats;
import trimwright.motion.Mishap;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.practice.FirstState;
import trimwright.practice.Watch;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.text.Progress;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnSetup;
import trimwright.units.Units;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WeatherSpec;
import trimwright.weather.WindField;

/**
 * A second of the demo boat's motion with the tall wing, its computed crew and its wind: 16 knots, gusts of 7 %, 16 strips, the
 * best angle, a tack or gybe every minute. A million over the microseconds of a row is how many times real time one core sails.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class MotionBenchmark extends Measured {
    private static final double STEP = MotionModel.STEP;
    private static final int STEPS_A_SECOND = (int) Math.round(1 / STEP);
    private static final int STEPS_A_TURN = 60 * STEPS_A_SECOND;

    @Param({"UPWIND", "DOWNWIND"})
    public Way way = Way.UPWIND;

    /** The wing's equations in full or on tangents. */
    @Param({"FULL", "LINEAR"})
    public MotionModel.Line line = MotionModel.Line.FULL;

    /** Its lift behind its flow, as everywhere, or at once, to tell what the lag costs. */
    @Param({"LAGGING"})
    public MotionModel.Lift lift = MotionModel.Lift.LAGGING;

    private final BoatFile file = BoatFiles.find("whimbrel14");
    private final double wind = Units.fromKnots(16);
    private final TurnSetup setup = setup();
    private Sailing sailing = new Sailing();

    private TurnSetup setup() {
        WingSpec wing = file.boat().getWing("tall");
        TargetGrid grid = new TargetGrid(
                List.of(Units.fromKnots(14), wind, Units.fromKnots(18)),
                TargetRequest.defaultGrid().angles());
        try {
            TargetBook book = TargetRun.of(new TargetRequest(file, wing, grid, Map.of()), Progress.NONE);
            return DrillBoats.turn(TurnKind.GYBE, TurnBegin.FOILS, file, wing, book, wind, 0.07);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Setup
    public void begin() {
        sailing = new Sailing();
    }

    @Benchmark
    public MotionState second() {
        if (Mishap.of(sailing.now.pose()) != null) {
            sailing = new Sailing();
        }
        for (int i = 0; i < STEPS_A_SECOND; i++) {
            sailing.sail();
        }
        return sailing.now;
    }

    /** One boat under way. */
    private final class Sailing {
        private final MotionModel model =
                new MotionModel(setup.boat(), setup.wing(), setup.air(), setup.water(), 16, lift, line);
        private final Watch watch;
        private final DrillCrew crew;
        private HelmOrder order = new HelmOrder(way, 1);
        private MotionState now = FirstState.onTheFoils(model, setup.boat(), setup.aims(), wind, way, 0.95);
        private long step;

        private Sailing() {
            WeatherSpec weather = new WeatherSpec(wind, 0, 10, setup.intensity(), TurbulenceSpectrum.KAIMAL, 0, 0, 0);
            watch = new Watch(model, setup.wing(), new WindField(weather, 1), now);
            crew = new DrillCrew(setup.boat(), setup.aims(), new ComputedHand(setup.wing(), Habits.NONE, 1), order);
        }

        private void sail() {
            if (step > 0 && step % STEPS_A_TURN == 0) {
                order = new HelmOrder(way, -order.tack());
                crew.tell(order);
            }
            Sight sight = watch.look(now, step * STEP, STEP);
            now = model.step(now, crew.work(sight, STEP), watch.wind(), STEP);
            step++;
        }
    }
}
