package trimwright.drills;

import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.chance.RandomStream;
import trimwright.crew.DrillCrew;
import trimwright.crew.HelmOrder;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.SailingAims;
import trimwright.crew.Sight;
import trimwright.crew.WingHand;
import trimwright.live.LiveBoat;
import trimwright.live.LiveFigures;
import trimwright.motion.BoatView;
import trimwright.motion.Commands;
import trimwright.motion.Controls;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.practice.FirstState;
import trimwright.practice.Watch;
import trimwright.track.Paths;
import trimwright.units.Angles;
import trimwright.units.Units;
import trimwright.water.WaterState;
import trimwright.weather.MovingAir;

/**
 * A boat with a computed crew and some hand at the wing, whose instruments are followed live. Noise of instruments is of the
 * sizes that the simulated races have.
 */
final class LiveSail {
    static final double STEP = MotionModel.STEP;
    static final WaterState WATER = WaterState.sea(Units.fromCelsius(15));

    private static final long START = 1_778_328_000_000_000_000L;
    private static final int STRIPS = 16;

    /** Instruments speak ten times a second. */
    private static final int READING = 5;

    private final Boat known;
    private final LiveBoat live;
    private final MotionModel model;
    private final DrillCrew crew;
    private final Watch watch;
    private final RandomStream noise;
    private final double noisy;
    private MotionState state;
    private long steps;

    /**
     * @param sailed the boat that sails
     * @param known the one in the boat file
     * @param noisy 1 with the instruments' noise, 0 without
     */
    LiveSail(
            Boat sailed,
            Boat known,
            WingSpec wing,
            SailingAims aims,
            MovingAir air,
            double wind,
            Way way,
            WingHand hand,
            LiveBoat live,
            double noisy,
            long seed) {
        this.known = known;
        this.live = live;
        this.noisy = noisy;
        model = new MotionModel(sailed, wing, AirState.STANDARD, WATER, STRIPS);
        state = FirstState.onTheFoils(model, sailed, aims, wind, way, 0.95);
        watch = new Watch(model, wing, air, state);
        crew = new DrillCrew(known, aims, hand, new HelmOrder(way, 1));
        noise = RandomStream.of(seed, "noise of instruments");
    }

    /** Time since the beginning (s). */
    double time() {
        return steps * STEP;
    }

    /** One step; what the crew saw at its beginning. */
    Sight step() {
        Sight sight = watch.look(state, time(), STEP);
        Commands commands = crew.work(sight, STEP);
        if (steps % READING == 0) {
            tell(sight);
        }
        state = model.step(state, commands, watch.wind(), STEP);
        steps++;
        return sight;
    }

    LiveFigures figures() {
        return live.figures();
    }

    private void tell(Sight sight) {
        long now = START + (long) (time() * 1e9);
        BoatView view = model.view(state);
        double x = known.windSensor().x();
        double z = -known.windSensor().height();
        double ahead = view.windFromAhead(watch.wind(), x, 0, z);
        double abeam = view.windFromStarboard(watch.wind(), x, 0, z);
        Controls controls = state.controls();
        double turned = known.windSensor().turnsWithWing() ? controls.sheet() : 0;
        double awa = StrictMath.atan2(abeam, ahead) - turned;
        say(now, Paths.AWA, Angles.signed(awa + noise(Math.toRadians(0.6))));
        say(now, Paths.AWS, StrictMath.hypot(ahead, abeam) + noise(0.15));
        say(now, Paths.SOG, sight.speed() + noise(0.04));
        say(now, Paths.COG, Angles.compass(sight.course() + noise(0.002)));
        say(now, Paths.HEADING, Angles.compass(sight.heading() + noise(Math.toRadians(0.25))));
        say(now, Paths.ROLL, state.pose().roll() + noise(Math.toRadians(0.12)));
        say(now, Paths.PITCH, state.pose().pitch() + noise(Math.toRadians(0.12)));
        say(now, Paths.RIDE_HEIGHT, sight.rideHeight() + noise(0.03));
        say(now, Paths.CAMBER, controls.camber() + noise(Math.toRadians(0.1)));
        say(now, Paths.TWIST, controls.twist() + noise(Math.toRadians(0.1)));
        say(now, Paths.SHEET, controls.sheet() + noise(Math.toRadians(0.1)));
        live.advance(now);
    }

    /** Without noise there is still some of the last digit: a reading that never changes is a frozen sensor's. */
    private double noise(double size) {
        double drawn = size * noise.normal();
        return noisy > 0 ? noisy * drawn : 1e-6 * drawn;
    }

    private void say(long now, String path, double value) {
        live.put("sim", path, now, value);
    }
}
