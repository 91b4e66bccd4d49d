package trimwright.platform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.air.WindProfile;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.Whimbrel14;
import trimwright.boat.WingSpec;
import trimwright.water.WaterState;

/** The boat's six sums against the same sums by another road, in states that are in balance and in many that are not. */
class IndependentBalancePropertyTest {
    private static final Boat BOAT = Whimbrel14.boat();
    private static final WingSpec WING = BOAT.getWing("tall");
    private static final AirState AIR = AirState.STANDARD;
    private static final WaterState SEA = WaterState.sea(288.15);
    private static final Platform PLATFORM = new Platform(BOAT, WING, AIR, SEA);
    private static final double WEIGHT = 9.80665 * (1930 + 420 + 6 * 85);
    private static final double LENGTH = 14.2;

    @Test
    void bothRoadsAgreeInAnyState() {
        Random random = new Random(5);
        int compared = 0;
        for (int i = 0; i < 150; i++) {
            Conditions conditions = new Conditions(
                    WindProfile.overSea(4 + 8 * random.nextDouble()),
                    i % 2 == 0 ? Side.PORT : Side.STARBOARD,
                    i % 3 == 0 ? FoilSet.BOTH_DOWN : FoilSet.LEEWARD_DOWN);
            SailingState state = randomState(random);
            Balance balance = PLATFORM.balance(state, conditions, null);
            if (balance == null || balance.wing().flow().stallMargin() < 0) {
                continue; // a stalled wing has more than one answer
            }
            compared++;
            double[] mine = IndependentBalance.residuals(BOAT, WING, AIR, SEA, state, conditions);
            double[] theirs = overWater(balance.total(), state, conditions);
            for (int k = 0; k < 6; k++) {
                assertEquals(theirs[k], mine[k], 1e-9, "component " + k + " of state " + i);
            }
        }
        assertTrue(compared > 50, compared + " states compared");
    }

    @Test
    void balancedStatesLeaveNothingOverByTheOtherRoad() {
        SailingState guess = SailingState.upright()
                .with(Variable.BOAT_SPEED, 14)
                .with(Variable.LEEWAY, 0.06)
                .with(Variable.MAIN_RAKE, 0.05)
                .with(Variable.SHEET, 0.3)
                .with(Variable.HEEL, 0.05)
                .with(Variable.RIDE_HEIGHT, 0.9)
                .with(Variable.ELEVATOR_DIFFERENTIAL, 0.04)
                .with(Variable.CREW_PLACE, 3.7)
                .with(Variable.TRUE_WIND_ANGLE, 1.8);
        int balanced = 0;
        Random random = new Random(6);
        for (int i = 0; i < 40; i++) {
            double camber = 0.25 + 0.2 * random.nextDouble();
            SailingState from = guess.with(Variable.CAMBER, camber)
                    .with(Variable.TWIST, camber * (0.6 + 0.4 * random.nextDouble()))
                    .with(Variable.HEEL, 0.08 * random.nextDouble())
                    .with(Variable.PITCH, 0.02 * random.nextGaussian())
                    .with(Variable.TRUE_WIND_ANGLE, 1.5 + 0.6 * random.nextDouble());
            Conditions conditions = new Conditions(
                    WindProfile.overSea(5 + 4 * random.nextDouble()),
                    i % 2 == 0 ? Side.PORT : Side.STARBOARD,
                    FoilSet.LEEWARD_DOWN);
            Equilibrium found = new Balancer(PLATFORM, conditions, Balancer.FOILING).balance(from);
            if (found instanceof Balanced steady) {
                balanced++;
                double[] left = IndependentBalance.residuals(BOAT, WING, AIR, SEA, steady.state(), conditions);
                assertTrue(IndependentBalance.largest(left) < 1e-6);
            }
        }
        assertTrue(balanced > 10, balanced + " states balanced");
    }

    @Test
    void aForceLeftOutWouldBeSeen() {
        // The check must be able to fail: a degree of rudder is 1e-3 of the weight.
        Conditions conditions = new Conditions(WindProfile.overSea(8), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
        SailingState atRest = SailingState.upright().with(Variable.RIDE_HEIGHT, -PLATFORM.restingDraft());
        Conditions calm = new Conditions(WindProfile.uniform(0), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
        assertTrue(IndependentBalance.largest(IndependentBalance.residuals(BOAT, WING, AIR, SEA, atRest, calm)) < 1e-9);
        assertTrue(IndependentBalance.largest(IndependentBalance.residuals(BOAT, WING, AIR, SEA, atRest, conditions))
                > 1e-3);
    }

    private static SailingState randomState(Random random) {
        return SailingState.upright()
                .with(Variable.BOAT_SPEED, 2 + 20 * random.nextDouble())
                .with(Variable.LEEWAY, 0.1 * random.nextDouble())
                .with(Variable.RUDDER, 0.1 * random.nextGaussian())
                .with(Variable.MAIN_RAKE, 0.1 * random.nextDouble())
                .with(Variable.ELEVATOR, 0.05 * random.nextGaussian())
                .with(Variable.SHEET, 0.3 * random.nextDouble())
                .with(Variable.CAMBER, 0.4 * random.nextDouble())
                .with(Variable.TWIST, 0.2 * random.nextDouble())
                .with(Variable.TWIST_MID_RATIO, 0.3 + 0.4 * random.nextDouble())
                .with(Variable.HEEL, 0.08 * random.nextGaussian())
                .with(Variable.PITCH, 0.03 * random.nextGaussian())
                .with(Variable.RIDE_HEIGHT, 1.5 * random.nextDouble() - 0.4)
                .with(Variable.ELEVATOR_DIFFERENTIAL, 0.05 * random.nextGaussian())
                .with(Variable.CREW_PLACE, 3.7 * random.nextDouble())
                .with(Variable.TRUE_WIND_ANGLE, 0.7 + 1.8 * random.nextDouble());
    }

    /** The platform's sums, turned here into axes along the course and taken to the point on the water. */
    private static double[] overWater(ForceSum sum, SailingState state, Conditions conditions) {
        double tack = conditions.windward() == Side.STARBOARD ? 1 : -1;
        double roll = tack * state.get(Variable.HEEL);
        double pitch = state.get(Variable.PITCH);
        double yaw = tack * state.get(Variable.LEEWAY);
        double[] f = turned(roll, pitch, yaw, sum.x(), sum.y(), sum.z());
        double[] m = turned(roll, pitch, yaw, sum.k(), sum.m(), sum.n());
        double down = -state.get(Variable.RIDE_HEIGHT);
        m[0] -= down * f[1];
        m[1] += down * f[0];
        return new double[] {
            f[0] / WEIGHT,
            f[1] / WEIGHT,
            f[2] / WEIGHT,
            m[0] / WEIGHT / LENGTH,
            m[1] / WEIGHT / LENGTH,
            m[2] / WEIGHT / LENGTH
        };
    }

    private static double[] turned(double roll, double pitch, double yaw, double x, double y, double z) {
        double y1 = y * Math.cos(roll) - z * Math.sin(roll);
        double z1 = y * Math.sin(roll) + z * Math.cos(roll);
        double x2 = x * Math.cos(pitch) + z1 * Math.sin(pitch);
        double z2 = -x * Math.sin(pitch) + z1 * Math.cos(pitch);
        return new double[] {x2 * Math.cos(yaw) - y1 * Math.sin(yaw), x2 * Math.sin(yaw) + y1 * Math.cos(yaw), z2};
    }
}
