package trimwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.air.WindProfile;
import trimwright.boat.Side;
import trimwright.boat.Whimbrel14;
import trimwright.platform.Balanced;
import trimwright.platform.Balancer;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.Target;
import trimwright.target.TargetFinder;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** The polynomial against boats balanced another way: the moment given, the sheet found. */
class SpeedSlopesTest {
    private static final Platform PLATFORM = new Platform(
            Whimbrel14.boat(), Whimbrel14.boat().getWing("tall"), AirState.STANDARD, WaterState.sea(288.15));
    private static final double WIND = Units.fromKnots(18);
    private static final TargetPoint POINT = point();

    private static TargetPoint point() {
        List<Double> angles = List.of(Units.fromDegrees(50), Units.fromDegrees(60));
        return new TargetFinder(PLATFORM, Map.of())
                .pointsAt(WIND, angles).stream()
                        .filter(point -> point.mode() == TargetMode.UPWIND && point.isFoiling() && point.isSolved())
                        .findFirst()
                        .orElseThrow();
    }

    private static SailingState target() {
        Target t = POINT.getTarget();
        return SailingState.upright()
                .with(Variable.BOAT_SPEED, t.boatSpeed())
                .with(Variable.TRUE_WIND_ANGLE, POINT.trueWindAngle())
                .with(Variable.LEEWAY, t.attitude().leeway())
                .with(Variable.RUDDER, t.attitude().rudder())
                .with(Variable.MAIN_RAKE, t.attitude().mainRake())
                .with(Variable.ELEVATOR, t.attitude().elevator())
                .with(Variable.ELEVATOR_DIFFERENTIAL, t.attitude().elevatorDifferential())
                .with(Variable.PITCH, t.attitude().pitch())
                .with(Variable.HEEL, t.attitude().heel())
                .with(Variable.RIDE_HEIGHT, t.attitude().rideHeight())
                .with(Variable.CREW_PLACE, Whimbrel14.boat().crew().yMax())
                .with(Variable.TWIST_MID_RATIO, t.trim().twistMidRatio())
                .with(Variable.CAMBER, t.trim().camber())
                .with(Variable.TWIST, t.trim().twist())
                .with(Variable.SHEET, t.trim().sheet());
    }

    private static SailingState balanced(SailingState start) {
        Conditions conditions = new Conditions(WindProfile.overSea(WIND), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
        if (new Balancer(PLATFORM, conditions, Balancer.FOILING).balance(start) instanceof Balanced found) {
            return found.state();
        }
        throw new AssertionError("no balance");
    }

    /** Apparent wind angle at 10 m from the bow less the sheet, by the triangle of velocities. */
    private static double incidence(SailingState state) {
        double angle = state.get(Variable.TRUE_WIND_ANGLE) - state.get(Variable.LEEWAY);
        double speed = state.get(Variable.BOAT_SPEED);
        double ahead = WIND * Math.cos(angle) + speed * Math.cos(state.get(Variable.LEEWAY));
        double abeam = WIND * Math.sin(angle) - speed * Math.sin(state.get(Variable.LEEWAY));
        return Math.atan2(abeam, ahead) - state.get(Variable.SHEET);
    }

    private static Trim trimOf(SailingState state) {
        return new Trim(
                incidence(state),
                state.get(Variable.CAMBER),
                state.get(Variable.TWIST),
                state.get(Variable.HEEL),
                state.get(Variable.RIDE_HEIGHT));
    }

    private static SpeedSlopes slopes() {
        SpeedSlopes slopes = SpeedSlopes.of(PLATFORM, POINT);
        assertNotNull(slopes);
        return slopes;
    }

    private static void assertPredicts(SailingState changed, double tolerance) {
        SailingState best = balanced(target());
        SailingState other = balanced(changed);
        double loss = Math.log(best.get(Variable.BOAT_SPEED) / other.get(Variable.BOAT_SPEED));
        SpeedSlopes slopes = slopes();
        double predicted = slopes.ofTrim(trimOf(other), trimOf(best)) + slopes.ofAttitude(trimOf(other), trimOf(best));
        assertEquals(loss, predicted, tolerance);
    }

    @Test
    void lessMomentCarriedCostsWhatABalancedBoatLoses() {
        double all = target().get(Variable.ELEVATOR_DIFFERENTIAL);
        SailingState less = target().with(Variable.ELEVATOR_DIFFERENTIAL, all - Units.fromDegrees(0.4));
        double loss = Math.log(
                balanced(target()).get(Variable.BOAT_SPEED) / balanced(less).get(Variable.BOAT_SPEED));
        assertTrue(loss > 0.003, "less moment costs speed in 18 kn upwind: " + loss);
        assertPredicts(less, 0.25 * loss);
    }

    @Test
    void moreTwistWithTheMomentHeldCostsLittleAndIsPredicted() {
        SailingState twisted = target().with(Variable.TWIST, target().get(Variable.TWIST) - Units.fromDegrees(2));
        assertPredicts(twisted, 0.004);
    }

    @Test
    void anotherRideHeightIsPredicted() {
        SailingState low = target().with(Variable.RIDE_HEIGHT, target().get(Variable.RIDE_HEIGHT) - 0.08);
        assertPredicts(low, 0.004);
    }

    @Test
    void whatIsNotLoggedCostsNothing() {
        Trim best = trimOf(balanced(target()));
        Trim unknown = new Trim(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        assertEquals(0, slopes().ofTrim(unknown, best), 0);
        assertEquals(0, slopes().ofAttitude(unknown, best), 0);
    }
}
