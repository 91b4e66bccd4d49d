package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.air.WindProfile;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.Whimbrel14;
import trimwright.platform.Balanced;
import trimwright.platform.Balancer;
import trimwright.platform.Conditions;
import trimwright.platform.Equilibrium;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;
import trimwright.units.Units;
import trimwright.water.WaterState;

/**
 * Draws trims at random, balances the boat anew for each by a solver that the search does not use, and keeps those that
 * pass no limit: none may be faster than the target by more than 0.1 per cent.
 */
class NoBetterTrimPropertyTest {
    private static final double BETTER = 1.001;
    private static final double LIMIT = -1e-6;
    private static final int KEPT = 500;

    /** What a trim is free to choose; the global search chooses the same. */
    static final List<Variable> CONTROLS = List.of(
            Variable.CAMBER,
            Variable.TWIST,
            Variable.TWIST_MID_RATIO,
            Variable.HEEL,
            Variable.RIDE_HEIGHT,
            Variable.PITCH,
            Variable.ELEVATOR_DIFFERENTIAL,
            Variable.CREW_PLACE);

    private final Boat boat = Whimbrel14.boat();
    private final Platform platform =
            new Platform(boat, boat.getWing("tall"), AirState.STANDARD, WaterState.sea(288.15));
    private final SplittableRandom random = new SplittableRandom(20261125);
    private int drawn;

    /** Two winds, near and over the whole range: 2,000 trims. */
    @Test
    void noneOfTwoThousandRandomTrimsIsFaster() {
        for (double windKn : new double[] {12, 20}) {
            Conditions conditions =
                    new Conditions(WindProfile.overSea(Units.fromKnots(windKn)), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
            Answer best = new Ladder(new Task(platform, conditions, Branch.FOILING, Map.of())).first();
            assertTrue(best != null, "no target in " + windKn + " kn");
            SailingState state = SailingState.ofScaled(best.x());
            assertEquals(KEPT, kept(state, conditions, 0.2), "near, " + windKn + " kn, of " + drawn);
            assertEquals(KEPT, kept(state, conditions, 1), "whole range, " + windKn + " kn, of " + drawn);
        }
    }

    private int kept(SailingState best, Conditions conditions, double share) {
        TrimProblem problem = new TrimProblem(
                List.of(
                        new Share(new WingFunctions(platform, conditions), 0),
                        new Share(new WaterFunctions(platform, conditions, Branch.FOILING), 0),
                        new Share(new GoalFunctions(Goal.speed(TargetMode.ANGLE)), 0)),
                Ranges.of(platform, Branch.FOILING),
                Map.of());
        Balancer balancer = new Balancer(platform, conditions, Balancer.FOILING);
        double most = best.get(Variable.BOAT_SPEED) * BETTER;
        int kept = 0;
        for (drawn = 0; kept < KEPT && drawn < 40 * KEPT; drawn++) {
            SailingState trial = balanced(balancer, best, draw(best, problem, share));
            if (trial != null && isAllowed(problem, trial.scaled())) {
                kept++;
                double speed = trial.get(Variable.BOAT_SPEED);
                assertTrue(speed <= most, "a trim gives " + speed + " m/s, the target " + most / BETTER);
            }
        }
        return kept;
    }

    private SailingState draw(SailingState best, TrimProblem problem, double share) {
        SailingState trial = best;
        for (Variable control : CONTROLS) {
            double low = problem.lower()[control.ordinal()] * control.scale();
            double high = problem.upper()[control.ordinal()] * control.scale();
            double reach = share * (high - low);
            double from = share < 1 ? Math.max(low, best.get(control) - reach) : low;
            double to = share < 1 ? Math.min(high, best.get(control) + reach) : high;
            trial = trial.with(control, from + random.nextDouble() * (to - from));
        }
        return trial;
    }

    /** The boat balanced anew under the drawn controls, begun from the target; null where it finds no balance. */
    private static @Nullable SailingState balanced(Balancer balancer, SailingState best, SailingState trial) {
        SailingState state = trial;
        for (Variable solved : Balancer.FOILING) {
            state = state.with(solved, best.get(solved));
        }
        Equilibrium equilibrium = balancer.balance(state);
        return equilibrium instanceof Balanced balanced ? balanced.balance().state() : null;
    }

    private static boolean isAllowed(TrimProblem problem, double[] x) {
        for (int i = 0; i < x.length; i++) {
            if (x[i] < problem.lower()[i] - 1e-9 || x[i] > problem.upper()[i] + 1e-9) {
                return false;
            }
        }
        double[] row = problem.valuesAt(x);
        if (row == null) {
            return false;
        }
        for (LimitRow limit : LimitRow.values()) {
            if (row[limit.place()] < LIMIT) {
                return false;
            }
        }
        return true;
    }
}
