package trimwright.crew;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.Whimbrel14;
import trimwright.motion.Controls;
import trimwright.motion.MotionLoads;
import trimwright.motion.MotionState;
import trimwright.motion.Pose;
import trimwright.motion.Rates;

/**
 * A crew that carries less of the righting moment leaves off the same angle of the elevators at any speed under its aim: their
 * force goes with the square of the speed, so the moment left off is the same share of what they can hold.
 */
class MomentShareTest {
    private static final double SPEED = 18;
    private static final double SHARE = 0.95;

    @Test
    void leavesOffTheSameShareOfWhatCanBeHeldAtAnySpeed() {
        double full = leftOff(SPEED);
        assertTrue(full > 0.001, full + " rad");
        assertEquals(full, leftOff(0.8 * SPEED), 1e-9);
        assertEquals(full, leftOff(0.6 * SPEED), 1e-9);
    }

    private static double leftOff(double speed) {
        Boat boat = Whimbrel14.boat();
        return differential(boat, new Habits(1, 0, 0, 0, 0), speed)
                - differential(boat, new Habits(SHARE, 0, 0, 0, 0), speed);
    }

    /** Asked for on starboard tack, steadily sailing at the aimed heel with the windward board up (rad). */
    private static double differential(Boat boat, Habits habits, double speed) {
        double heel = Math.toRadians(4);
        Aim aim = new Aim(
                SPEED,
                new Aim.WingAim(0.4, 0.2, 0.5, 0),
                new Aim.AttitudeAim(heel, 1, 0, 0, 0, /* differential= */ Math.toRadians(0.5)),
                /* rightingMoment= */ 180_000);
        Controls controls = new Controls(0.4, 0.4, 0.2, 0.5, 0.05, 0.05, 0, 0, 0, 1, 0, 3);
        MotionState state = new MotionState(
                new Pose(0, 0, 3, -Math.toRadians(45), heel, 0), new Rates(speed, 0, 0, 0, 0, 0), controls);
        MotionLoads loads = new MotionLoads(1000, 3000, -15_000, -150_000, 0.2, 30_000, 0, 1000, -1000, 0, 1);
        Sight sight = new Sight(0, state, loads, 1, 8, 0, new Sight.Felt(22, Math.toRadians(20)));
        FlightController flight = new FlightController(boat, habits);
        flight.work(sight, aim, 1, null, null, 0.01);
        return flight.differential();
    }
}
