package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.air.WindProfile;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.Whimbrel14;
import trimwright.boat.WingSpec;
import trimwright.evidence.ValidatedAgainst;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.IndependentBalance;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.units.Units;
import trimwright.water.WaterState;

/**
 * The course theorem on a book: the apparent wind meets the course at the sum of the drag angles of what is in the air and of
 * what is in the water, and speed over wind is sin(twa - awa) / sin(awa). Drag angles are worked out here, from forces summed by
 * code that the book does not use.
 */
class CourseTheoremValidationTest {
    /** Balance left over is below 1e-6 of the weight, forces along the course are a tenth of it. */
    private static final double ANGLE_ERROR = 1e-5;

    private static final Boat BOAT = Whimbrel14.boat();
    private static final WingSpec WING = BOAT.getWing("tall");
    private static final AirState AIR = AirState.STANDARD;
    private static final WaterState SEA = WaterState.sea(288.15);

    @Test
    @ValidatedAgainst(
            source = "LANCHESTER",
            where = "course theorem with drag angles of air and water at each foiling point of a book",
            tolerance = "1e-5 rad: what is left of the balance; 1e-9 for speed over wind")
    void dragAnglesAddUpToTheApparentWindAngle() {
        List<Double> winds = List.of(Units.fromKnots(12), Units.fromKnots(18), Units.fromKnots(24));
        List<Double> angles = List.of(50.0, 70.0, 90.0, 110.0, 130.0, 145.0).stream()
                .map(Units::fromDegrees)
                .toList();
        Platform platform = new Platform(BOAT, WING, AIR, SEA);
        TargetBook book = new TargetFinder(platform, Map.of()).bookOf(new TargetGrid(winds, angles));
        int checked = 0;
        for (TargetPoint point : book.points()) {
            if (point.isSolved() && point.isFoiling()) {
                check(point);
                checked++;
            }
        }
        assertTrue(checked >= 20, "only " + checked + " foiling points");
    }

    private static void check(TargetPoint point) {
        Target target = point.getTarget();
        double wind = point.trueWindSpeed();
        double twa = point.trueWindAngle();
        double toCourse = target.apparentWindAngle() + target.attitude().leeway();
        String where = Units.toKnots(wind) + " kn at " + Units.toDegrees(twa) + " deg";
        assertEquals(Math.sin(twa - toCourse) / Math.sin(toCourse), target.boatSpeed() / wind, 1e-9, where);

        Conditions conditions = new Conditions(WindProfile.overSea(wind), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
        double[] air = IndependentBalance.air(BOAT, WING, AIR, SEA, stateOf(point), conditions);
        double[] water = IndependentBalance.water(BOAT, WING, AIR, SEA, stateOf(point), conditions);
        // Axes along the course and to starboard of it; the wind comes from starboard.
        double flowX = -wind * Math.cos(twa) - target.boatSpeed();
        double flowY = -wind * Math.sin(twa);
        double flow = Math.hypot(flowX, flowY);
        double dragOfAir = (air[0] * flowX + air[1] * flowY) / flow;
        double liftOfAir = (air[0] * -flowY + air[1] * flowX) / flow;
        double ofAir = Math.atan2(dragOfAir, liftOfAir);
        double ofWater = Math.atan2(-water[0], water[1]);
        assertEquals(toCourse, ofAir + ofWater, ANGLE_ERROR, where);
    }

    /** The state as the target gives it; where the crew sits does not matter to forces along the water. */
    private static SailingState stateOf(TargetPoint point) {
        Target target = point.getTarget();
        Attitude attitude = target.attitude();
        TrimSetting trim = target.trim();
        return SailingState.upright()
                .with(Variable.BOAT_SPEED, target.boatSpeed())
                .with(Variable.TRUE_WIND_ANGLE, point.trueWindAngle())
                .with(Variable.LEEWAY, attitude.leeway())
                .with(Variable.RUDDER, attitude.rudder())
                .with(Variable.MAIN_RAKE, attitude.mainRake())
                .with(Variable.ELEVATOR, attitude.elevator())
                .with(Variable.ELEVATOR_DIFFERENTIAL, attitude.elevatorDifferential())
                .with(Variable.HEEL, attitude.heel())
                .with(Variable.RIDE_HEIGHT, attitude.rideHeight())
                .with(Variable.PITCH, attitude.pitch())
                .with(Variable.SHEET, trim.sheet())
                .with(Variable.CAMBER, trim.camber())
                .with(Variable.TWIST, trim.twist())
                .with(Variable.TWIST_MID_RATIO, trim.twistMidRatio());
    }
}
