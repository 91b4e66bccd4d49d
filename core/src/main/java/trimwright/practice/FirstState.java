package trimwright.practice;

import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;
import trimwright.boat.Boat;
import trimwright.crew.Aim;
import trimwright.crew.Boards;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.SailingAims;
import trimwright.motion.Commands;
import trimwright.motion.Controls;
import trimwright.motion.LocalWind;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.motion.Pose;
import trimwright.motion.Rates;

/**
 * Where a boat begins that a crew then settles: on the foils, near the card's speed, trim and attitude, wind from starboard and north,
 * rakes and elevators such that she neither rises, falls nor pitches, the windward board up where one foil carries her.
 */
public final class FirstState {
    private static final double LEAST_HEIGHT = 0.6;

    /** Rake and elevator that the search begins with (rad), its steps for slopes (rad), and how often it goes on: chosen. */
    private static final double FIRST_RAKE = Math.toRadians(3);

    private static final double SMALL = Math.toRadians(0.2);
    private static final int ROUNDS = 6;

    /** Step after which accelerations are read (s). */
    private static final double INSTANT = 1e-4;

    private FirstState() {}

    /**
     * At the best angle of the card.
     *
     * @param wind at 10 m (m/s)
     * @param share of the card's speed (-)
     */
    public static MotionState onTheFoils(
            MotionModel model, Boat boat, SailingAims aims, double wind, Way way, double share) {
        return onTheFoils(
                model, boat, aims, wind, way == Way.UPWIND ? aims.upwindAngle(wind) : aims.downwindAngle(wind), share);
    }

    /** The same at a true wind angle from the course (rad). */
    public static MotionState onTheFoils(
            MotionModel model, Boat boat, SailingAims aims, double wind, double angle, double share) {
        Aim aim = aims.at(wind, angle);
        if (share * aim.speed() > Boards.ONE_BOARD) {
            MotionState alone =
                    levelled(model, boat, placed(model, boat, aim, wind, angle, share, /* windward= */ 0), wind);
            if (alone.controls().portRake() < boat.mainFoil().rakeMax() - SMALL) {
                return alone;
            }
        }
        return levelled(model, boat, placed(model, boat, aim, wind, angle, share, /* windward= */ 1), wind);
    }

    private static MotionState placed(
            MotionModel model, Boat boat, Aim aim, double wind, double angle, double share, double windward) {
        Aim.AttitudeAim lies = aim.attitude();
        double speed = share * aim.speed();
        ApparentWind felt = new TrueWind(wind, angle).apparent(speed, 0);
        double out = boat.crew().yMax();
        // With both boards down they share lift and side force, and the elevators work as one.
        double alone = 1 - windward;
        double leeway = alone * lies.leeway();
        Controls controls = new Controls(
                Math.max(0, felt.angle() - leeway - aim.trim().incidence()),
                aim.trim().camber(),
                aim.trim().twist(),
                aim.trim().twistMid(),
                FIRST_RAKE,
                FIRST_RAKE,
                /* elevator= */ 0,
                alone * lies.differential(),
                -alone * lies.rudder(),
                /* portBoard= */ 1,
                windward,
                out);
        double height =
                model.heightFor(Math.max(LEAST_HEIGHT, lies.rideHeight()), lies.heel(), lies.pitch(), controls.crew());
        return new MotionState(
                new Pose(0, 0, height, Math.PI * 2 - angle + leeway, lies.heel(), lies.pitch()),
                new Rates(speed * StrictMath.cos(leeway), -speed * StrictMath.sin(leeway), 0, 0, 0, 0),
                controls);
    }

    /** Newton's method for climb and pitch that do not change. */
    private static MotionState levelled(MotionModel model, Boat boat, MotionState state, double wind) {
        MotionState now = state;
        for (int i = 0; i < ROUNDS; i++) {
            Controls c = now.controls();
            Rates at = change(model, now, wind);
            Rates byRake = change(model, with(now, boat, c.portRake() + SMALL, c.elevator()), wind);
            Rates byElevator = change(model, with(now, boat, c.portRake(), c.elevator() + SMALL), wind);
            double a = (byRake.climb() - at.climb()) / SMALL;
            double b = (byElevator.climb() - at.climb()) / SMALL;
            double d = (byRake.pitch() - at.pitch()) / SMALL;
            double e = (byElevator.pitch() - at.pitch()) / SMALL;
            double area = a * e - b * d;
            if (!(Math.abs(area) > 0)) {
                return now;
            }
            now = with(
                    now,
                    boat,
                    c.portRake() - (at.climb() * e - at.pitch() * b) / area,
                    c.elevator() - (at.pitch() * a - at.climb() * d) / area);
        }
        return now;
    }

    private static Rates change(MotionModel model, MotionState state, double wind) {
        return model.copy()
                .step(
                        state,
                        new Commands(state.controls(), Commands.FlapWork.TRIM),
                        LocalWind.of(wind, /* from= */ 0),
                        INSTANT)
                .rates();
    }

    private static MotionState with(MotionState state, Boat boat, double rake, double elevator) {
        Controls c = state.controls();
        double raked =
                Math.max(boat.mainFoil().rakeMin(), Math.min(boat.mainFoil().rakeMax(), rake));
        double most = boat.rudder().elevatorAngleMax();
        return new MotionState(
                state.pose(),
                state.rates(),
                new Controls(
                        c.sheet(),
                        c.camber(),
                        c.twist(),
                        c.twistMid(),
                        raked,
                        raked,
                        Math.max(-most, Math.min(most, elevator)),
                        c.differential(),
                        c.rudder(),
                        c.portBoard(),
                        c.starboardBoard(),
                        c.crew()));
    }
}
