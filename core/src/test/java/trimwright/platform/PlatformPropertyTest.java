package trimwright.platform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.air.WindProfile;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.Whimbrel14;
import trimwright.units.Units;
import trimwright.water.WaterState;

class PlatformPropertyTest {
    private static final Boat BOAT = Whimbrel14.boat();
    private static final Platform PLATFORM =
            new Platform(BOAT, BOAT.getWing("tall"), AirState.STANDARD, WaterState.sea(288.15));
    private static final SailingState SAILING = SailingState.upright()
            .with(Variable.BOAT_SPEED, 15)
            .with(Variable.LEEWAY, 0.07)
            .with(Variable.RUDDER, -0.04)
            .with(Variable.MAIN_RAKE, 0.05)
            .with(Variable.ELEVATOR, 0.03)
            .with(Variable.SHEET, 0.35)
            .with(Variable.CAMBER, 0.45)
            .with(Variable.TWIST, 0.5)
            .with(Variable.HEEL, 0.07)
            .with(Variable.RIDE_HEIGHT, 0.9)
            .with(Variable.PITCH, -0.01)
            .with(Variable.ELEVATOR_DIFFERENTIAL, 0.06)
            .with(Variable.CREW_PLACE, 3.7)
            .with(Variable.TRUE_WIND_ANGLE, 1.4);

    private static Conditions conditions(double windKn, Side windward) {
        return new Conditions(WindProfile.overSea(Units.fromKnots(windKn)), windward, FoilSet.LEEWARD_DOWN);
    }

    private static Balance balance(SailingState state, Conditions conditions) {
        Balance balance = PLATFORM.balance(state, conditions, null);
        assertTrue(balance != null);
        return balance;
    }

    /** Side force, roll and yaw change their sign, all else stays: to 1e-9 of weight and of weight times length. */
    @Test
    void portAndStarboardAgree() {
        for (FoilSet foils : FoilSet.values()) {
            for (double height : new double[] {0.9, -0.2}) {
                SailingState state = SAILING.with(Variable.RIDE_HEIGHT, height);
                WindProfile wind = WindProfile.overSea(8);
                ForceSum starboard = balance(state, new Conditions(wind, Side.STARBOARD, foils))
                        .total();
                ForceSum port =
                        balance(state, new Conditions(wind, Side.PORT, foils)).total();
                double force = 1e-9 * PLATFORM.weight();
                double moment = force * PLATFORM.length();
                assertEquals(starboard.x(), port.x(), force);
                assertEquals(-starboard.y(), port.y(), force);
                assertEquals(starboard.z(), port.z(), force);
                assertEquals(-starboard.k(), port.k(), moment);
                assertEquals(starboard.m(), port.m(), moment);
                assertEquals(-starboard.n(), port.n(), moment);
                assertTrue(Math.abs(starboard.y()) > 0.01 * PLATFORM.weight(), "the test state must not be symmetric");
            }
        }
    }

    @Test
    void withoutWindAndSpeedTheRestingBoatFloats() {
        SailingState atRest = SailingState.upright().with(Variable.RIDE_HEIGHT, -PLATFORM.restingDraft());
        Balance balance = balance(atRest, conditions(0, Side.STARBOARD));
        assertTrue(balance.residual() < 1e-9, "left over: " + balance.residual());
    }

    /** Weight times arm about the leeward tip, elevators and hulls without load. */
    @Test
    void rightingMomentAtRestIsWeightTimesArm() {
        for (double heel : new double[] {-0.05, 0, 0.08}) {
            SailingState state = SailingState.upright()
                    .with(Variable.HEEL, heel)
                    .with(Variable.RIDE_HEIGHT, 1)
                    .with(Variable.CREW_PLACE, 3.7);
            double expected = 0;
            double tipHeight = -BOAT.mainFoil().shaftLength()
                    + (BOAT.mainFoil().yJunction() - BOAT.mainFoil().yLift())
                            * Math.tan(BOAT.mainFoil().tipDihedral());
            double[][] masses = {
                {BOAT.platform().mass(), 0, BOAT.platform().height()},
                {420, 0, 1.5 + 9.9},
                {BOAT.crew().mass(), 3.7, BOAT.crew().height()}
            };
            for (double[] mass : masses) {
                double arm = mass[1] + BOAT.mainFoil().yLift();
                double up = mass[2] - tipHeight;
                expected += Units.G * mass[0] * (arm * Math.cos(heel) + up * Math.sin(heel));
            }
            double found = balance(state, conditions(0, Side.STARBOARD)).rightingMoment();
            assertEquals(expected, found, 1e-9 * expected);
        }
    }

    @Test
    void theBalancedStateIsTheSameOnBothTacks() {
        SailingState starboard = balanced(Side.STARBOARD);
        SailingState port = balanced(Side.PORT);
        for (Variable variable : Variable.values()) {
            assertEquals(starboard.get(variable), port.get(variable), 1e-9, variable.name());
        }
        assertEquals(15, starboard.get(Variable.BOAT_SPEED), 6);
    }

    private static SailingState balanced(Side windward) {
        Equilibrium found = new Balancer(PLATFORM, conditions(16, windward), Balancer.FOILING).balance(SAILING);
        assertTrue(found instanceof Balanced, () -> found.toString());
        assertTrue(((Balanced) found).balance().residual() < 1e-10);
        return ((Balanced) found).state();
    }

    @Test
    void withoutWindThereIsNoSteadyFlight() {
        Equilibrium found = new Balancer(PLATFORM, conditions(0.5, Side.STARBOARD), Balancer.FOILING).balance(SAILING);
        assertTrue(found instanceof NoBalance);
    }

    @Test
    void onTheHullsTheBoatFindsItsOwnHeight() {
        SailingState guess = SAILING.with(Variable.BOAT_SPEED, 5)
                .with(Variable.MAIN_RAKE, 0)
                .with(Variable.ELEVATOR, 0)
                .with(Variable.ELEVATOR_DIFFERENTIAL, 0)
                .with(Variable.HEEL, 0)
                .with(Variable.CREW_PLACE, 2)
                .with(Variable.CAMBER, 0.3)
                .with(Variable.TWIST, 0.2)
                .with(Variable.RIDE_HEIGHT, -PLATFORM.restingDraft())
                .with(Variable.PITCH, 0);
        Equilibrium found = new Balancer(PLATFORM, conditions(7, Side.STARBOARD), Balancer.ON_HULLS).balance(guess);
        assertTrue(found instanceof Balanced, () -> found.toString());
        Balance balance = ((Balanced) found).balance();
        assertTrue(balance.water().buoyancy() > 0.5 * PLATFORM.weight());
    }
}
