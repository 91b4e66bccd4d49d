package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.air.WindProfile;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.Whimbrel14;
import trimwright.platform.Balance;
import trimwright.platform.Balanced;
import trimwright.platform.Balancer;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** What being off is said to cost is what a boat balanced anew loses. */
class TrimCostsPropertyTest {
    /** Of the loss (kn): a cubic for the true curve, one exact step for the balance. */
    private static final double ERROR_KN = 0.02;

    /** Of the righting moment where it is said to be held (-): elevators and ride follow, so not quite. */
    private static final double MOMENT = 0.02;

    private final Boat boat = Whimbrel14.boat();
    private final Platform platform =
            new Platform(boat, boat.getWing("tall"), AirState.STANDARD, WaterState.sea(288.15));
    private int compared;

    @Test
    void eachChangeCostsWhatItIsSaidTo() {
        for (double windKn : new double[] {12, 16, 22}) {
            Conditions conditions =
                    new Conditions(WindProfile.overSea(Units.fromKnots(windKn)), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
            Task task = new Task(platform, conditions, Branch.FOILING, Map.of());
            Answer first = new Ladder(task).first();
            assertTrue(first != null);
            for (TargetMode mode : TargetMode.values()) {
                Answer best = mode == TargetMode.ANGLE ? first : task.alongWind(mode, first);
                SailingState shown = new Ridge(new RidgeEnds(task), mode, best).leastDisturbed();
                TrimCosts costs = CostFinder.at(task, shown, best);
                String what = windKn + " kn " + mode;
                check(what, conditions, shown, Variable.CAMBER, Variable.SHEET, costs.camber(), -1);
                check(what, conditions, shown, Variable.TWIST, Variable.SHEET, costs.twist(), 1);
                check(what, conditions, shown, Variable.SHEET, Variable.CAMBER, costs.sheet(), 1);
            }
        }
        assertTrue(compared > 40, "only " + compared + " losses compared");
    }

    private void check(
            String what,
            Conditions conditions,
            SailingState shown,
            Variable control,
            Variable partner,
            ControlCost cost,
            int easing) {
        Function<Double, @Nullable Balance> held = by -> balance(conditions, shown, control, by, partner);
        Function<Double, @Nullable Balance> alone = by -> balance(conditions, shown, control, by, Variable.CREW_PLACE);
        String name = what + " " + control;
        Balance here = held.apply(0.0);
        assertTrue(here != null);
        for (double by : new double[] {cost.tenth().low(), cost.tenth().high()}) {
            compare(name + " held", here, held, by, 0.1, false);
            Balance there = held.apply(by);
            if (there != null) {
                assertEquals(here.rightingMoment(), there.rightingMoment(), MOMENT * here.rightingMoment(), name);
            }
        }
        compare(name + " held low", here, held, cost.threeTenths().low(), 0.3, false);
        compare(name + " held high", here, held, cost.threeTenths().high(), 0.3, false);
        compare(name + " alone", here, alone, cost.aloneTenth(), 0.1, false);
        compare(name + " alone", here, alone, cost.aloneThreeTenths(), 0.3, false);
        compare(name + " by one", here, alone, easing * Units.fromDegrees(1), Units.toKnots(cost.offByOne()), true);
    }

    /** @param exact whether the change is known to cost so much; where it ends at a limit or a range it costs less */
    private void compare(
            String what,
            Balance here,
            Function<Double, @Nullable Balance> line,
            double by,
            double lossKn,
            boolean exact) {
        Balance there = line.apply(by);
        if (there == null) {
            return;
        }
        compared++;
        double lost = Units.toKnots(
                here.state().get(Variable.BOAT_SPEED) - there.state().get(Variable.BOAT_SPEED));
        double error = ERROR_KN + 0.05 * lossKn;
        assertTrue(lost < lossKn + error, what + " by " + Units.toDegrees(by) + " deg costs " + lost);
        if (exact) {
            assertEquals(lossKn, lost, error, what);
        }
    }

    private @Nullable Balance balance(
            Conditions conditions, SailingState shown, Variable control, double by, Variable closing) {
        List<Variable> settled = List.of(
                Variable.BOAT_SPEED, Variable.LEEWAY, Variable.RUDDER, Variable.MAIN_RAKE, Variable.ELEVATOR, closing);
        SailingState moved = shown.with(control, shown.get(control) + by);
        return new Balancer(platform, conditions, settled).balance(moved) instanceof Balanced found
                ? found.balance()
                : null;
    }
}
