package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.Whimbrel14;
import trimwright.platform.Platform;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** Far off the wind the hulls are slow, the apparent wind comes from behind and no sheet is long enough. */
class StalledOnHullsTest {
    private final Boat boat = Whimbrel14.boat();
    private final Platform platform =
            new Platform(boat, boat.getWing("tall"), AirState.STANDARD, WaterState.sea(288.15));

    private TargetBook book(double windKn, double... anglesDeg) {
        List<Double> angles =
                Arrays.stream(anglesDeg).mapToObj(Units::fromDegrees).toList();
        TargetGrid grid = new TargetGrid(List.of(Units.fromKnots(windKn)), angles);
        return new TargetFinder(platform, Map.of()).bookOf(grid);
    }

    @Test
    void theReasonWhyThereIsNoTargetIsTheStalledWing() {
        List<TargetPoint> points = book(6, 60, 150, 165).listBest().stream()
                .filter(point -> point.mode() == TargetMode.ANGLE)
                .toList();
        assertTrue(points.get(0).isSolved());
        for (TargetPoint deep : points.subList(1, 3)) {
            assertFalse(deep.isSolved());
            assertEquals(Branch.DISPLACEMENT, deep.branch());
            assertTrue(String.valueOf(deep.reason()).contains("wing stays stalled"), deep.reason());
        }
    }

    /** The sailors' practice of heading up to take off and bearing away then (no source). */
    @Test
    void aFoilingTargetBeyondIsNotReachedByItself() {
        for (TargetPoint point : book(16, 100, 145).points()) {
            if (point.isFoiling() && point.mode() == TargetMode.ANGLE) {
                boolean deep = point.trueWindAngle() > 2;
                assertEquals(
                        deep ? Set.of(TargetCaveat.NOT_REACHED_BY_ITSELF) : Set.of(),
                        point.getTarget().caveats());
            }
        }
    }
}
