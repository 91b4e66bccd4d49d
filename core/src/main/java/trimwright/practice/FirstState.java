package trimwright.practice;

import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;
import trimwright.boat.Boat;
import trimwright.crew.Aim;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.SailingAims;
import trimwright.motion.Controls;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.motion.Pose;
import trimwright.motion.Rates;

/** Where a boat begins that a crew then settles: on the foils, near the card's speed and trim, wind from starboard and north. */
public final class FirstState {
    private static final double RAKE = Math.toRadians(3);
    private static final double LEAST_HEIGHT = 0.6;

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
        double speed = share * aim.speed();
        ApparentWind felt = new TrueWind(wind, angle).apparent(speed, 0);
        double roll = aim.attitude().heel();
        double out = boat.crew().yMax();
        Controls controls = new Controls(
                Math.max(0, felt.angle() - aim.trim().incidence()),
                aim.trim().camber(),
                aim.trim().twist(),
                aim.trim().twistMid(),
                RAKE,
                RAKE,
                /* elevator= */ 0,
                /* differential= */ 0,
                /* rudder= */ 0,
                /* portBoard= */ 1,
                /* starboardBoard= */ 1,
                out);
        double height = model.heightFor(Math.max(LEAST_HEIGHT, aim.attitude().rideHeight()), roll, 0, out);
        return new MotionState(
                new Pose(0, 0, height, Math.PI * 2 - angle, roll, 0), new Rates(speed, 0, 0, 0, 0, 0), controls);
    }
}
