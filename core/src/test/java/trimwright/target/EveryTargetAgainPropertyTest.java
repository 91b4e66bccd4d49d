package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.air.WindProfile;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.Whimbrel14;
import trimwright.boat.WingSpec;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.IndependentBalance;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.SlowSolver;
import trimwright.platform.Variable;
import trimwright.units.Units;
import trimwright.water.WaterState;

/**
 * Each target once more: with its wing, heel and height as the target has them, a slow solver that shares no balance code finds, from
 * a state beside it, the same speed, with the crew within their range. The same state mirrored is in balance on the other tack. A few
 * winds as a rule; {@code -Dtrimwright.again=tall,short} takes the whole default book of these wings and prints what it found.
 */
class EveryTargetAgainPropertyTest {
    /** Of the speed (-): what is left of a target's balance, a millionth of the weight, divided by how steeply drag rises with speed. */
    private static final double SAME = 1e-4;

    /** What may be left of the sums in the slow solver (-). */
    private static final double LEFT = 1e-9;

    /** Crew beyond their range by rounding (m). */
    private static final double PLACE = 0.005;

    private static final List<Variable> FOILING = List.of(
            Variable.BOAT_SPEED,
            Variable.LEEWAY,
            Variable.RUDDER,
            Variable.MAIN_RAKE,
            Variable.ELEVATOR,
            Variable.CREW_PLACE);

    private static final List<Variable> ON_HULLS = List.of(
            Variable.BOAT_SPEED,
            Variable.LEEWAY,
            Variable.RUDDER,
            Variable.RIDE_HEIGHT,
            Variable.PITCH,
            Variable.CREW_PLACE);

    private static final String WHOLE = System.getProperty("trimwright.again", "");
    private static final Boat BOAT = Whimbrel14.boat();
    private static final AirState AIR = AirState.STANDARD;
    private static final WaterState SEA = WaterState.sea(288.15);

    private int checked;
    private double most;

    @Test
    void aSlowSolverFindsTheSameSpeed() {
        boolean isWhole = !WHOLE.isEmpty();
        List<Double> winds = isWhole ? steps(6, 26, 2) : steps(8, 26, 6);
        List<Double> angles = isWhole ? steps(30, 170, 5) : steps(40, 160, 20);
        for (String id : isWhole ? WHOLE.split(",", -1) : new String[] {"tall"}) {
            WingSpec wing = BOAT.getWing(id);
            TargetFinder finder = new TargetFinder(new Platform(BOAT, wing, AIR, SEA), Map.of());
            checked = 0;
            most = 0;
            for (double windKn : winds) {
                double wind = Units.fromKnots(windKn);
                for (TargetPoint point : finder.pointsAt(
                        wind, angles.stream().map(Units::fromDegrees).toList())) {
                    if (point.isSolved()) {
                        check(wing, wind, point);
                    }
                }
            }
            if (isWhole) {
                System.out.println(id + " wing: " + checked + " targets found again, speeds within " + most);
            }
            assertTrue(checked >= 20, "only " + checked);
        }
    }

    private static List<Double> steps(double from, double to, double by) {
        List<Double> steps = new ArrayList<>();
        for (double value = from; value <= to; value += by) {
            steps.add(value);
        }
        return steps;
    }

    private void check(WingSpec wing, double wind, TargetPoint point) {
        String what = wing.id() + ", " + Units.toKnots(wind) + " kn, " + point.mode() + " at "
                + Units.toDegrees(point.trueWindAngle()) + " deg, " + point.branch();
        double out = BOAT.crew().yMax();
        SailingState target = point.state();
        SailingState beside = target.with(Variable.BOAT_SPEED, 0.98 * target.get(Variable.BOAT_SPEED))
                .with(Variable.LEEWAY, target.get(Variable.LEEWAY) + Units.fromDegrees(0.2))
                .with(Variable.RUDDER, target.get(Variable.RUDDER) - Units.fromDegrees(0.2))
                .with(Variable.CREW_PLACE, 0.9 * out);
        Conditions starboard = in(wind, Side.STARBOARD);
        SailingState found = new SlowSolver(BOAT, wing, AIR, SEA, starboard)
                .solve(beside, point.isFoiling() ? FOILING : ON_HULLS, LEFT);
        assertNotNull(found, what);
        double off = found.get(Variable.BOAT_SPEED) / target.get(Variable.BOAT_SPEED) - 1;
        assertEquals(0, off, SAME, what);
        double place = found.get(Variable.CREW_PLACE);
        assertTrue(Math.abs(place) <= out + PLACE, what + ": crew at " + place + " m");
        double left = IndependentBalance.largest(
                IndependentBalance.residuals(BOAT, wing, AIR, SEA, found, in(wind, Side.PORT)));
        assertTrue(left < 10 * LEFT, what + ": mirrored, " + left + " is left over");
        checked++;
        most = Math.max(most, Math.abs(off));
    }

    private static Conditions in(double wind, Side windward) {
        return new Conditions(WindProfile.overSea(wind), windward, FoilSet.LEEWARD_DOWN);
    }
}
