package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertTrue;

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
import trimwright.target.search.Answer;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** Targets are in balance by code that shares nothing with the search: six sums under 1e-6. */
class TargetBalancePropertyTest {
    private static final double LEFT = 1e-6;
    private static final Boat BOAT = Whimbrel14.boat();
    private static final AirState AIR = AirState.STANDARD;
    private static final WaterState SEA = WaterState.sea(288.15);

    @Test
    void foilingTargetsAreInBalance() {
        for (String wing : new String[] {"tall", "short"}) {
            for (double windKn : new double[] {12, 20}) {
                for (Side windward : Side.values()) {
                    check(wing, windKn, windward);
                }
            }
        }
    }

    private static void check(String wingId, double windKn, Side windward) {
        WingSpec wing = BOAT.getWing(wingId);
        Platform platform = new Platform(BOAT, wing, AIR, SEA);
        Conditions conditions =
                new Conditions(WindProfile.overSea(Units.fromKnots(windKn)), windward, FoilSet.LEEWARD_DOWN);
        Task task = new Task(platform, conditions, Branch.FOILING, Map.of());
        Answer first = new Ladder(task).first();
        assertTrue(first != null && first.isConverged(), wingId + " wing, " + windKn + " kn: no foiling target");
        Answer upwind = task.alongWind(TargetMode.UPWIND, first);
        Answer downwind = task.alongWind(TargetMode.DOWNWIND, first);
        RidgeEnds ends = new RidgeEnds(task);
        for (Answer answer : new Answer[] {first, upwind, downwind}) {
            if (!answer.isConverged()) {
                continue;
            }
            inBalance(wing, SailingState.ofScaled(answer.x()), conditions);
            inBalance(wing, new Ridge(ends, TargetMode.ANGLE, answer).leastDisturbed(), conditions);
        }
    }

    private static void inBalance(WingSpec wing, SailingState state, Conditions conditions) {
        double left = IndependentBalance.largest(IndependentBalance.residuals(BOAT, wing, AIR, SEA, state, conditions));
        assertTrue(left < LEFT, "left over " + left);
    }

    @Test
    void targetsOnTheHullsAreInBalance() {
        WingSpec wing = BOAT.getWing("tall");
        Platform platform = new Platform(BOAT, wing, AIR, SEA);
        Conditions conditions =
                new Conditions(WindProfile.overSea(Units.fromKnots(6)), Side.PORT, FoilSet.LEEWARD_DOWN);
        Task task = new Task(platform, conditions, Branch.DISPLACEMENT, Map.of());
        int found = 0;
        for (double angleDeg : new double[] {50, 100, 140}) {
            double angle = Units.fromDegrees(angleDeg);
            Answer answer = task.atAngle(angle, FirstGuess.onHulls(platform, Units.fromKnots(6), angle));
            if (answer.isConverged()) {
                found++;
                inBalance(wing, SailingState.ofScaled(answer.x()), conditions);
            }
        }
        assertTrue(found > 0, "no target on the hulls in 6 kn");
    }
}
