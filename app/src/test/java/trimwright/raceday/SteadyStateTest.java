package trimwright.raceday;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.crew.ComputedHand;
import trimwright.crew.DrillCrew;
import trimwright.crew.Habits;
import trimwright.crew.HelmOrder;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.SailingAims;
import trimwright.crew.Sight;
import trimwright.motion.Commands;
import trimwright.motion.Controls;
import trimwright.motion.LocalWind;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.motion.Pose;
import trimwright.motion.Rates;
import trimwright.practice.FirstState;
import trimwright.practice.Watch;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.target.Attitude;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.target.TrimSetting;
import trimwright.text.Progress;
import trimwright.units.Units;
import trimwright.water.WaterState;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WeatherSpec;
import trimwright.weather.WindField;

/**
 * The boat in six degrees of freedom against the balance of the target book, which shares forces but no equation of motion with
 * her: two ways to one number. She is at rest at every foiling target; the computed crew holds her at the best ones, and gets there
 * from nine tenths of the speed.
 */
class SteadyStateTest {
    private static final BoatFile FILE = BoatFiles.find("whimbrel14");
    private static final Boat BOAT = FILE.boat();
    private static final WingSpec WING = BOAT.wings().get(0);
    private static final WaterState WATER = WaterState.sea(Units.fromCelsius(15));
    private static final List<Double> KNOTS = List.of(11.0, 12.0, 13.0, 14.0, 16.0, 18.0, 20.0);
    /** Time from which she counts as settled (s). */
    private static final double SETTLED = 120;

    private static TargetBook book;
    private static SailingAims aims;

    @BeforeAll
    static void find() throws InterruptedException {
        List<Double> winds = KNOTS.stream().map(Units::fromKnots).toList();
        TargetGrid grid = new TargetGrid(winds, TargetRequest.defaultGrid().angles());
        book = TargetRun.of(new TargetRequest(FILE, WING, grid, Map.of()), Progress.NONE);
        aims = AimsCard.of(book);
    }

    /** Set to a target she neither gathers nor loses speed, climbs, falls or turns: all six equations, 16 strips for the book's. */
    @Test
    void sheIsAtRestAtEveryFoilingTarget() {
        int count = 0;
        for (TargetPoint point : book.points()) {
            if (point.isSolved() && point.isFoiling()) {
                Rates change = change(point);
                String where = Units.toKnots(point.trueWindSpeed()) + " kn, " + Math.toDegrees(point.trueWindAngle());
                assertEquals(0, change.surge(), 0.005, where + ": m/s2 forward");
                assertEquals(0, change.sway(), 0.005, where + ": m/s2 to starboard");
                assertEquals(0, change.climb(), 0.02, where + ": m/s2 up");
                assertEquals(0, change.roll(), 0.002, where + ": rad/s2 of roll");
                assertEquals(0, change.pitch(), 0.001, where + ": rad/s2 of pitch");
                assertEquals(0, change.yaw(), 0.0005, where + ": rad/s2 of yaw");
                count++;
            }
        }
        assertTrue(count > 120, count + " foiling targets");
    }

    @Test
    void theCrewHoldsHerAtTheBestProgressWithinHalfAPerCent() {
        for (double knots : KNOTS) {
            isNear(knots, Way.UPWIND, 1);
            isNear(knots, Way.DOWNWIND, 1);
        }
    }

    @Test
    void fromNineTenthsOfTheSpeedSheGetsThere() {
        for (double knots : new double[] {12, 13, 16, 20}) {
            isNear(knots, Way.UPWIND, 0.9);
            isNear(knots, Way.DOWNWIND, 0.9);
        }
    }

    private static void isNear(double knots, Way way, double share) {
        // From 18 knots down the wind the windward elevator's limit binds: the crew keeps 3 per cent inside it, and
        // hunts by a degree of heel.
        double most = knots > 17 && way == Way.DOWNWIND ? 0.012 : 0.005;
        assertEquals(1, progress(Units.fromKnots(knots), way, share), most, knots + " kn, " + way + " from " + share);
    }

    /** Accelerations at a target, wind from starboard. */
    private static Rates change(TargetPoint point) {
        Target target = point.getTarget();
        Attitude lies = target.attitude();
        TrimSetting trim = target.trim();
        MotionModel model = new MotionModel(BOAT, WING, AirState.STANDARD, WATER, 16);
        Controls controls = new Controls(
                trim.sheet(),
                trim.camber(),
                trim.twist(),
                trim.twistMidRatio(),
                lies.mainRake(),
                /* starboardRake= */ 0,
                lies.elevator(),
                lies.elevatorDifferential(),
                -lies.rudder(),
                /* portBoard= */ 1,
                /* starboardBoard= */ 0,
                BOAT.crew().yMax());
        double height = model.heightFor(lies.rideHeight(), lies.heel(), lies.pitch(), controls.crew());
        Pose pose = new Pose(0, 0, height, lies.leeway() - point.trueWindAngle(), lies.heel(), lies.pitch());
        Rates rates = new Rates(
                target.boatSpeed() * Math.cos(lies.leeway()),
                -target.boatSpeed() * Math.sin(lies.leeway()),
                0,
                0,
                0,
                0);
        double step = 1e-4;
        Rates next = model.step(
                        new MotionState(pose, rates, controls),
                        new Commands(controls, Commands.FlapWork.TRIM),
                        LocalWind.of(point.trueWindSpeed(), 0),
                        step)
                .rates();
        return new Rates(
                (next.surge() - rates.surge()) / step,
                (next.sway() - rates.sway()) / step,
                next.climb() / step,
                next.roll() / step,
                next.pitch() / step,
                next.yaw() / step);
    }

    /** Progress over the book's best once the crew has settled, begun at a share of the best speed. */
    private static double progress(double wind, Way way, double share) {
        MotionModel model = new MotionModel(BOAT, WING, AirState.STANDARD, WATER, 16);
        MotionState now = FirstState.onTheFoils(model, BOAT, aims, wind, way, share);
        WeatherSpec steady = new WeatherSpec(wind, 0, 10, 0, TurbulenceSpectrum.KAIMAL, 0, 0, 0);
        Watch watch = new Watch(model, WING, new WindField(steady, 1), now);
        DrillCrew crew =
                new DrillCrew(BOAT, aims, new ComputedHand(WING, Habits.NONE, 1), new HelmOrder(way, /* tack= */ 1));
        double sum = 0;
        int count = 0;
        for (int i = 0; i * MotionModel.STEP < 2 * SETTLED; i++) {
            Sight sight = watch.look(now, i * MotionModel.STEP, MotionModel.STEP);
            now = model.step(now, crew.work(sight, MotionModel.STEP), watch.wind(), MotionModel.STEP);
            if (i * MotionModel.STEP > SETTLED) {
                sum += crew.progress(sight);
                count++;
            }
        }
        TargetMode mode = way == Way.UPWIND ? TargetMode.UPWIND : TargetMode.DOWNWIND;
        return sum / count / best(mode, wind).velocityMadeGood();
    }

    private static Target best(TargetMode mode, double wind) {
        return book.points().stream()
                .filter(point -> point.mode() == mode && point.trueWindSpeed() == wind && point.isSolved())
                .findFirst()
                .orElseThrow()
                .getTarget();
    }
}
