package trimwright.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.Whimbrel14;
import trimwright.evidence.ValidatedAgainst;
import trimwright.water.WaterState;

/** What the moving boat's foils give when the water boils on them. */
class FastFoilValidationTest {
    private static final Boat BOAT = Whimbrel14.boat();
    private static final double KNOT = 1852 / 3600.0;

    @Test
    @ValidatedAgainst(
            source = "BENSON-LAND",
            where = "2200 lb/ft2 as the most that a fully cavitating foil carried: at 50 and 70 kn no rake lifts more",
            tolerance = "exact bound; half of it is reached")
    void noRakeLiftsMoreThanTheCavitatingCeiling() {
        double ceiling =
                2200 * 4.4482216152605 / (0.3048 * 0.3048) * BOAT.mainFoil().tipArea();
        for (double knots : new double[] {50, 70}) {
            double most = 0;
            for (int degrees = 0; degrees <= 8; degrees++) {
                most = Math.max(most, lift(knots, degrees));
            }
            assertTrue(most <= ceiling && most > 0.5 * ceiling, most + " N at " + knots + " kn of " + ceiling);
        }
    }

    /** Lift grows with the square of speed until the water boils: source as above for the end of that. */
    @Test
    void liftStopsGrowingWithTheSquareOfSpeed() {
        double slow = lift(20, 4) / (20 * 20);
        assertEquals(1, lift(30, 4) / (30 * 30) / slow, 0.1);
        assertTrue(lift(70, 8) / (70 * 70) < 0.7 * lift(30, 8) / (30 * 30), lift(70, 8) + " N at 70 kn");
    }

    private static double lift(double knots, int rakeDegrees) {
        MotionModel model = new MotionModel(BOAT, BOAT.wings().get(0), AirState.STANDARD, WaterState.sea(288.15), 16);
        double rake = Math.toRadians(rakeDegrees);
        Controls controls = new Controls(0, 0, 0, 0.5, rake, rake, 0, 0, 0, 1, 1, 0);
        MotionState state = new MotionState(
                new Pose(0, 0, model.heightFor(0.8, 0, 0, 0), 0, 0, 0),
                new Rates(knots * KNOT, 0, 0, 0, 0, 0),
                controls);
        model.step(
                state, new Commands(controls, Commands.FlapWork.TRIM), LocalWind.of(0.01, Math.PI), MotionModel.STEP);
        return model.loads().portMain();
    }
}
