package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A book made by hand: the look-up must return the nodes, stay in one branch and be smooth. */
class TargetBookTest {
    private static final TargetGrid GRID = new TargetGrid(List.of(4.0, 5.0, 6.0, 7.0), List.of(0.8, 1.0, 1.2, 1.4));

    private static Target target(double speed) {
        Band band = new Band(0.1, 0.2);
        return new Target(
                speed,
                speed / 2,
                0.3,
                20,
                new TrimSetting(0.3, 0.1, 0.5, 0.1),
                new TrimBands(band, band, band),
                new Attitude(0.05, 1, 0.06, 0.01, 0, 0.03, 0.01, 0.02),
                new Loads(2000, 6000, 150_000, 1, 15_000, 4000),
                Set.of(TargetLimit.RIGHTING_MOMENT),
                Set.of());
    }

    /** Quadratic in wind and angle, so that parabolic slopes give it back exactly inside. */
    private static double speed(double wind, double angle) {
        return 2 * wind - 3 * (angle - 1.1) * (angle - 1.1) + 0.1 * wind * wind;
    }

    private static TargetBook book() {
        List<TargetPoint> points = new ArrayList<>();
        for (double wind : GRID.winds()) {
            points.add(TargetPoint.solved(TargetMode.UPWIND, Branch.FOILING, wind, 0.9, target(3 * wind)));
            for (double angle : GRID.angles()) {
                points.add(
                        wind < 4.5
                                ? TargetPoint.unsolved(TargetMode.ANGLE, Branch.FOILING, wind, angle, "too little wind")
                                : TargetPoint.solved(
                                        TargetMode.ANGLE, Branch.FOILING, wind, angle, target(speed(wind, angle))));
                points.add(TargetPoint.solved(TargetMode.ANGLE, Branch.DISPLACEMENT, wind, angle, target(wind)));
            }
        }
        return new TargetBook("somewhere", "tall", "test", GRID, points);
    }

    @Test
    void nodesAreReturnedAsTheyAre() {
        Target found = book().find(6.0, 1.2).target();
        assertTrue(found != null);
        assertEquals(speed(6.0, 1.2), found.boatSpeed(), 1e-12);
        assertEquals(Set.of(TargetLimit.RIGHTING_MOMENT), found.limits());
    }

    @Test
    void withoutCostsItFindsTheSameTargets() {
        TargetBook bare = book().withoutCosts();
        for (double wind = 4.6; wind < 7; wind += 0.13) {
            for (double angle = 0.8; angle < 1.4; angle += 0.07) {
                assertEquals(book().find(wind, angle), bare.find(wind, angle));
            }
            assertEquals(book().findUpwind(wind), bare.findUpwind(wind));
        }
    }

    @Test
    void aParabolaIsGivenBackBetweenTheNodes() {
        Target found = book().find(5.4, -1.09).target();
        assertTrue(found != null);
        assertEquals(speed(5.4, 1.09), found.boatSpeed(), 1e-12);
    }

    @Test
    void aCellWithAnUnsolvedCornerFallsBackToTheHullsAndNeverBlends() {
        TargetLookup found = book().find(4.5, 1.1);
        assertTrue(found.point() != null);
        assertEquals(Branch.DISPLACEMENT, found.point().branch());
        assertEquals(4.5, found.point().getTarget().boatSpeed(), 1e-12);
    }

    @Test
    void besideAnUnsolvedNodeTheCaveatSaysSo() {
        assertTrue(book().find(5.5, 1.1).caveats().contains(TargetCaveat.NEAR_BRANCH_EDGE));
        assertEquals(Set.of(), book().find(6.5, 1.1).caveats());
    }

    @Test
    void slopesAreContinuousAcrossNodes() {
        TargetBook book = book();
        double e = 1e-6;
        for (double angle : new double[] {1.0, 1.2}) {
            double before = (speedAt(book, 6.3, angle) - speedAt(book, 6.3, angle - e)) / e;
            double after = (speedAt(book, 6.3, angle + e) - speedAt(book, 6.3, angle)) / e;
            assertEquals(before, after, 1e-4);
        }
    }

    private static double speedAt(TargetBook book, double wind, double angle) {
        Target target = book.find(wind, angle).target();
        assertTrue(target != null);
        return target.boatSpeed();
    }

    @Test
    void outsideTheGridThereIsNoTarget() {
        TargetLookup found = book().find(7.5, 1.0);
        assertNull(found.point());
        assertEquals(Set.of(TargetCaveat.OUTSIDE_GRID), found.caveats());
        assertNull(book().findUpwind(3.0).point());
    }

    @Test
    void theBestAngleIsInterpolatedOverWind() {
        Target found = book().findUpwind(5.5).target();
        assertTrue(found != null);
        assertEquals(16.5, found.boatSpeed(), 1e-12);
    }

    @Test
    void theBestOfEachNodeIsTheFasterBranch() {
        List<TargetPoint> best = book().listBest();
        assertEquals(4 * 5, best.size());
        assertEquals(Branch.DISPLACEMENT, best.get(1).branch());
        assertEquals(Branch.FOILING, best.get(best.size() - 1).branch());
    }
}
