package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
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

/** What a computed book says between its nodes is what the search finds there. */
class BetweenNodesTest {
    /** Of the contract (kn): under what a crew sees on its display. */
    private static final double ERROR_KN = 0.05;

    private final Boat boat = Whimbrel14.boat();
    private final Platform platform =
            new Platform(boat, boat.getWing("tall"), AirState.STANDARD, WaterState.sea(288.15));
    private final SplittableRandom random = new SplittableRandom(50);

    @Test
    void offTheNodesTheSpeedIsThatOfTheSearch() {
        check(Branch.FOILING, new double[] {14, 16}, 60, 140, 4);
        check(Branch.FOILING, new double[] {20, 22}, 50, 150, 4);
        check(Branch.DISPLACEMENT, new double[] {10, 12}, 35, 55, 6);
    }

    /**
     * At places inside the branch, a step or more from its ends, where the book has no doubts, in some winds between two of
     * the book's.
     */
    private void check(Branch branch, double[] windsKn, double lowDeg, double highDeg, int winds) {
        List<Double> angles = DoubleStream.iterate(lowDeg, deg -> deg <= highDeg, deg -> deg + 5)
                .mapToObj(Units::fromDegrees)
                .toList();
        TargetGrid grid = new TargetGrid(List.of(Units.fromKnots(windsKn[0]), Units.fromKnots(windsKn[1])), angles);
        TargetBook book = new TargetFinder(platform, Map.of()).bookOf(grid);
        int compared = 0;
        for (int i = 0; i < winds; i++) {
            double windKn = windsKn[0] + random.nextDouble() * (windsKn[1] - windsKn[0]);
            List<Double> places = new ArrayList<>();
            for (double deg = lowDeg; deg < highDeg; deg += 5) {
                places.add(Units.fromDegrees(deg + 5 * random.nextDouble()));
            }
            compared += compare(book, branch, windKn, places);
        }
        assertTrue(compared >= 20, branch + ": only " + compared + " places compared");
    }

    private int compare(TargetBook book, Branch branch, double windKn, List<Double> places) {
        double wind = Units.fromKnots(windKn);
        Conditions conditions = new Conditions(WindProfile.overSea(wind), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
        Task task = new Task(platform, conditions, branch, Map.of());
        Sweep direct = new Sweep(task, places);
        sweep(direct, task, wind, places);
        RidgeEnds ends = new RidgeEnds(task);
        int compared = 0;
        for (int i = 0; i < places.size(); i++) {
            TargetPoint between = book.find(branch, wind, places.get(i)).point();
            Answer answer = direct.at(i);
            if (answer == null || between == null || isRough(between)) {
                continue;
            }
            SailingState shown = new Ridge(ends, TargetMode.ANGLE, answer).leastDisturbed();
            assertEquals(
                    Units.toKnots(shown.get(Variable.BOAT_SPEED)),
                    Units.toKnots(between.getTarget().boatSpeed()),
                    ERROR_KN,
                    branch + ", " + windKn + " kn at " + Units.toDegrees(places.get(i)) + " deg");
            compared++;
        }
        return compared;
    }

    private void sweep(Sweep sweep, Task task, double wind, List<Double> places) {
        if (task.branch() == Branch.DISPLACEMENT) {
            double first = places.get(0);
            sweep.go(task.atAngle(first, FirstGuess.onHulls(platform, wind, first)), 0, 1);
            return;
        }
        Answer first = new Ladder(task).first();
        assertTrue(first != null, "no foiling state");
        double angle = SailingState.ofScaled(first.x()).get(Variable.TRUE_WIND_ANGLE);
        int wider = (int) places.stream().filter(place -> place < angle).count();
        sweep.go(first, wider, 1);
        sweep.go(first, wider - 1, -1);
    }

    private static boolean isRough(TargetPoint point) {
        return point.getTarget().caveats().contains(TargetCaveat.NEAR_BRANCH_EDGE);
    }
}
