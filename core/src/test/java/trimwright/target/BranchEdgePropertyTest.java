package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.Whimbrel14;
import trimwright.platform.Platform;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** In light wind, where cells lack corners, a question between the nodes has an answer all the same, near what a search finds. */
class BranchEdgePropertyTest {
    /**
     * Between the best angle and the next column (kn). The values say that they are rough; rough is less than what a degree of
     * sheet costs.
     */
    private static final double BESIDE_BEST = 0.4;

    /** On from a wind to the middle between two (kn): half of it is a quarter of a cell's curve. */
    private static final double LED_ON = 1.0;

    private static final Boat BOAT = Whimbrel14.boat();
    private static final TargetFinder FINDER = new TargetFinder(
            new Platform(BOAT, BOAT.getWing("tall"), AirState.STANDARD, WaterState.sea(288.15)), Map.of());
    private static final TargetBook BOOK = FINDER.bookOf(new TargetGrid(
            List.of(Units.fromKnots(8), Units.fromKnots(10), Units.fromKnots(12), Units.fromKnots(14)),
            DoubleStream.iterate(50, deg -> deg <= 150, deg -> deg + 5)
                    .mapToObj(Units::fromDegrees)
                    .toList()));

    @Test
    void everyWindHasABestUpwindAndDownwindAndTheSurfaceKnowsThem() {
        for (double windKn = 8; windKn <= 14; windKn += 0.25) {
            double wind = Units.fromKnots(windKn);
            for (TargetLookup best : List.of(BOOK.findUpwind(wind), BOOK.findDownwind(wind))) {
                TargetPoint point = best.point();
                assertNotNull(point, windKn + " kn");
                TargetPoint there = BOOK.find(wind, point.trueWindAngle()).point();
                if (point.trueWindAngle() >= Units.fromDegrees(50)) {
                    assertNotNull(there, windKn + " kn at the best angle");
                    // Led on from a wind both are rough; between winds both are interpolated, each its way.
                    boolean isLedOn = best.caveats().contains(TargetCaveat.NEAR_BRANCH_EDGE);
                    double lost =
                            point.getTarget().boatSpeed() - there.getTarget().boatSpeed();
                    assertTrue(Units.toKnots(lost) < (isLedOn ? LED_ON : BESIDE_BEST), windKn + " kn: " + lost);
                }
            }
        }
    }

    @Test
    void besideTheBestAngleValuesAreThoseOfASearch() {
        int compared = 0;
        for (double windKn : new double[] {11, 12.5, 13, 13.5}) {
            double wind = Units.fromKnots(windKn);
            List<Double> angles = new ArrayList<>();
            for (TargetMode mode : new TargetMode[] {TargetMode.UPWIND, TargetMode.DOWNWIND}) {
                TargetPoint best = BOOK.findBest(Branch.FOILING, mode, wind).point();
                if (best != null) {
                    double way = mode == TargetMode.UPWIND ? 1 : -1;
                    angles.add(best.trueWindAngle() + way * Units.fromDegrees(1));
                    angles.add(best.trueWindAngle() + way * Units.fromDegrees(2));
                }
            }
            compared += compare(wind, angles.stream().sorted().toList(), Branch.FOILING, BESIDE_BEST);
        }
        assertTrue(compared >= 10, "only " + compared);
    }

    /** Between 8 knots, on the hulls, and 10, on the foils. */
    @Test
    void betweenTheLastWindOnTheHullsAndTheFirstOnTheFoilsEitherIsLedOn() {
        List<Double> reaches = List.of(Units.fromDegrees(95), Units.fromDegrees(100), Units.fromDegrees(105));
        assertEquals(3, compare(Units.fromKnots(8.5), reaches, Branch.DISPLACEMENT, LED_ON));
        assertEquals(3, compare(Units.fromKnots(9.5), reaches, Branch.FOILING, LED_ON));
    }

    private static int compare(double wind, List<Double> angles, Branch branch, double mostKn) {
        int compared = 0;
        for (TargetPoint direct : FINDER.pointsAt(wind, angles)) {
            TargetPoint between = BOOK.find(wind, direct.trueWindAngle()).point();
            if (direct.mode() == TargetMode.ANGLE && direct.branch() == branch && direct.isSolved()) {
                assertNotNull(between);
                assertEquals(branch, between.branch());
                assertEquals(
                        Units.toKnots(direct.getTarget().boatSpeed()),
                        Units.toKnots(between.getTarget().boatSpeed()),
                        mostKn,
                        Units.toKnots(wind) + " kn, " + Units.toDegrees(direct.trueWindAngle()) + " deg");
                assertTrue(mostKn < LED_ON || between.getTarget().caveats().contains(TargetCaveat.NEAR_BRANCH_EDGE));
                compared++;
            }
        }
        return compared;
    }
}
