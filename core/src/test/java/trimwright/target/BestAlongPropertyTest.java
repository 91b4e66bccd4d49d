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
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** A best speed made good is never beaten by the angles of its own branch, whichever way it is found. */
class BestAlongPropertyTest {
    /** A target gives up as much speed at most to be less disturbed by gusts: the width of its bands. */
    private static final double GIVEN_UP = 0.995;

    private final Boat boat = Whimbrel14.boat();
    private final List<Double> angles = new ArrayList<>();

    BestAlongPropertyTest() {
        for (int deg = 30; deg <= 170; deg += 10) {
            angles.add(Units.fromDegrees(deg));
        }
    }

    private Platform platform(String wing) {
        return new Platform(boat, boat.getWing(wing), AirState.STANDARD, WaterState.sea(288.15));
    }

    @Test
    void noAngleOfABookMakesMoreGoodThanItsBest() {
        for (String wing : new String[] {"tall", "short"}) {
            TargetFinder finder = new TargetFinder(platform(wing), Map.of());
            for (double windKn : new double[] {6, 10, 16, 24}) {
                List<TargetPoint> points = finder.pointsAt(Units.fromKnots(windKn), angles);
                for (TargetMode mode : new TargetMode[] {TargetMode.UPWIND, TargetMode.DOWNWIND}) {
                    for (Branch branch : Branch.values()) {
                        assertBest(points, mode, branch, wing + ", " + windKn + " kn");
                    }
                }
            }
        }
    }

    private static void assertBest(List<TargetPoint> points, TargetMode mode, Branch branch, String where) {
        TargetPoint best = points.stream()
                .filter(point -> point.mode() == mode && point.branch() == branch)
                .findFirst()
                .orElseThrow();
        double way = mode == TargetMode.UPWIND ? 1 : -1;
        double most = points.stream()
                .filter(point -> point.mode() == TargetMode.ANGLE && point.branch() == branch && point.isSolved())
                .mapToDouble(point -> way
                        * StrictMath.cos(point.trueWindAngle())
                        * point.getTarget().boatSpeed())
                .max()
                .orElse(0);
        if (most > 0 && !"the boat takes off".equals(best.reason())) {
            assertTrue(best.isSolved(), where + ": none " + mode + " on " + branch);
            assertTrue(
                    best.getTarget().velocityMadeGood() > GIVEN_UP * most,
                    where + ", " + mode + " on " + branch + ": "
                            + best.getTarget().velocityMadeGood() + ", angles " + most);
        }
    }

    /** Two searches that know nothing of each other: with the angle free, and angle by angle. */
    @Test
    void amongAnglesItComesToTheSameAsWithTheAngleFree() {
        Conditions conditions =
                new Conditions(WindProfile.overSea(Units.fromKnots(14)), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
        Task task = new Task(platform("tall"), conditions, Branch.FOILING, Map.of());
        Sweep sweep = new Sweep(task, angles);
        Answer first = new Ladder(task).first();
        assertNotNull(first);
        int wider = 0;
        while (angles.get(wider) < SailingState.ofScaled(first.x()).get(Variable.TRUE_WIND_ANGLE)) {
            wider++;
        }
        sweep.go(first, wider, 1);
        sweep.go(first, wider - 1, -1);
        for (TargetMode mode : new TargetMode[] {TargetMode.UPWIND, TargetMode.DOWNWIND}) {
            int start = sweep.bestOf(mode);
            Answer from = sweep.at(start);
            assertNotNull(from);
            BestAlong along = new BestAlong(task, sweep, mode);
            Goal goal = Goal.speed(mode);
            double free =
                    goal.speed(SailingState.ofScaled(task.alongWind(mode, from).x()));
            double among = goal.speed(
                    SailingState.ofScaled(along.amongAngles(start, from).x()));
            // At the top speed falls with the square of the angle: a twentieth of a degree costs 1e-5 or less.
            assertEquals(free, among, 1e-4 * free, mode.toString());
            assertTrue(among > goal.speed(SailingState.ofScaled(from.x())));
        }
    }
}
