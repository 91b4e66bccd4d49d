package trimwright.learned;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trimwright.target.Attitude;
import trimwright.target.Band;
import trimwright.target.Branch;
import trimwright.target.Loads;
import trimwright.target.SpeedSlopes;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.target.TargetLimit;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.target.TrimBands;
import trimwright.target.TrimSetting;

class LearnedBookTest {
    private static final List<Double> WINDS = List.of(4.0, 6.0);
    private static final List<Double> ANGLES = List.of(1.0, 2.0);
    private static final double SPEED = 10;

    private static Target target(Set<TargetLimit> limits) {
        Band none = new Band(0, 0);
        double ahead = 6 * Math.cos(1) + SPEED;
        double beside = 6 * Math.sin(1);
        return new Target(
                SPEED,
                SPEED * Math.cos(1),
                Math.atan2(beside, ahead),
                Math.hypot(beside, ahead),
                new TrimSetting(0, 0, 0.5, 0),
                new TrimBands(none, none, none),
                new Attitude(0, 1, 0, 0, 0, 0, 0, 0),
                new Loads(0, 0, 0, 1, 0, 0),
                limits,
                Set.of());
    }

    private static TargetPoint point(Branch branch, TargetLimit... limits) {
        return TargetPoint.solved(TargetMode.ANGLE, branch, 6, 1, target(Set.of(limits)))
                .withSlopes(new SpeedSlopes(2, 3));
    }

    private static LearnedTargets learned(double logRatio) {
        List<LearnedPlace> places = new ArrayList<>();
        for (double wind : WINDS) {
            for (double angle : ANGLES) {
                places.add(new LearnedPlace(wind, angle, logRatio, 0.01, 1, 600, 5));
            }
        }
        return new LearnedTargets(WINDS, ANGLES, places);
    }

    private static TargetPoint made(TargetPoint point, double logRatio, double fastest) {
        TargetBook model = new TargetBook("a", "b", "c", new TargetGrid(WINDS, ANGLES), List.of(point));
        return LearnedBook.of(model, learned(logRatio), fastest).points().get(0);
    }

    @Test
    void speedAndWhatFollowsFromItAreThoseLearnt() {
        TargetPoint made = made(point(Branch.FOILING), Math.log(0.9), Double.POSITIVE_INFINITY);
        Target target = made.getTarget();
        assertEquals(9, target.boatSpeed(), 1e-12);
        assertEquals(9 * Math.cos(1), target.velocityMadeGood(), 1e-12);
        double ahead = 6 * Math.cos(1) + 9;
        assertEquals(Math.atan2(6 * Math.sin(1), ahead), target.apparentWindAngle(), 1e-12);
        assertEquals(Math.hypot(6 * Math.sin(1), ahead), target.apparentWindSpeed(), 1e-12);
    }

    @Test
    void noTargetRisesWhereMoreSpeedWouldBreakALimit() {
        for (TargetLimit limit : List.of(
                TargetLimit.CAVITATION_MAIN,
                TargetLimit.CAVITATION_ELEVATOR,
                TargetLimit.VENTILATION,
                TargetLimit.SPEED_LIMIT)) {
            TargetPoint held = point(Branch.FOILING, limit);
            assertSame(held, made(held, 0.05, Double.POSITIVE_INFINITY));
            assertEquals(
                    9,
                    made(held, Math.log(0.9), Double.POSITIVE_INFINITY)
                            .getTarget()
                            .boatSpeed(),
                    1e-12);
        }
        assertEquals(10.2, made(point(Branch.FOILING), 0.05, 10.2).getTarget().boatSpeed(), 1e-12);
    }

    @Test
    void onTheHullsAndWhereNothingIsLearntItIsTheModels() {
        TargetPoint onHulls = point(Branch.DISPLACEMENT);
        assertSame(onHulls, made(onHulls, 0.05, Double.POSITIVE_INFINITY));
        TargetPoint onFoils = point(Branch.FOILING);
        assertSame(onFoils, made(onFoils, 0, Double.POSITIVE_INFINITY));
        assertEquals(0, learned(0.05).logRatio(8, 1));
        assertEquals(0.05, learned(0.05).logRatio(5, 1.5), 1e-15);
    }
}
