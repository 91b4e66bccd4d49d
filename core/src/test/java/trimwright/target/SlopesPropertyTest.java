package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
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
import trimwright.units.Units;
import trimwright.water.WaterState;

/** Exact first derivatives of all equations and limits against central differences, at random states on either tack. */
class SlopesPropertyTest {
    /** Step of the differences (scaled), and a second one half as long: their difference tells how good they are. */
    private static final double STEP = 2e-4;

    /** Allowed beside four times the differences' own error: last digits of the wing's flow over the step. */
    private static final double ROUNDING = 2e-6;

    private final Boat boat = Whimbrel14.boat();
    private final Platform platform =
            new Platform(boat, boat.getWing("tall"), AirState.STANDARD, WaterState.sea(288.15));
    private final SplittableRandom random = new SplittableRandom(92);

    @Test
    void slopesAreThoseOfCentralDifferencesOnTheFoils() {
        check(Branch.FOILING, FoilSet.LEEWARD_DOWN, 12);
    }

    @Test
    void slopesAreThoseOfCentralDifferencesOnTheHulls() {
        check(Branch.DISPLACEMENT, FoilSet.LEEWARD_DOWN, 12);
    }

    @Test
    void slopesAreThoseOfCentralDifferencesWithBothFoilsDown() {
        check(Branch.FOILING, FoilSet.BOTH_DOWN, 5);
        check(Branch.DISPLACEMENT, FoilSet.BOTH_DOWN, 5);
    }

    private void check(Branch branch, FoilSet foils, int states) {
        int compared = 0;
        for (int k = 0; k < states; k++) {
            double wind = Units.fromKnots(6 + 20 * random.nextDouble());
            Side side = random.nextBoolean() ? Side.PORT : Side.STARBOARD;
            Conditions conditions = new Conditions(WindProfile.overSea(wind), side, foils);
            double[] x = draw(branch);
            for (Functions functions : functions(branch, conditions)) {
                compared += compare(functions, x, branch + " " + side);
            }
        }
        assertTrue(compared > 20 * states, "only " + compared + " columns compared");
    }

    private List<Functions> functions(Branch branch, Conditions conditions) {
        return List.of(
                new WingFunctions(platform, conditions),
                new GustFunctions(platform, conditions),
                new WaterFunctions(platform, conditions, branch),
                new GoalFunctions(Goal.speed(TargetMode.UPWIND)),
                new GoalFunctions(Goal.speed(TargetMode.DOWNWIND)),
                new GoalFunctions(
                        Goal.end(Goal.Kind.HIGH_END, TargetMode.ANGLE, Variable.CAMBER, new Goal.Floor(5, 0.1))));
    }

    /** Anywhere in the middle part of all ranges. */
    private double[] draw(Branch branch) {
        Ranges ranges = Ranges.of(platform, branch);
        double[] low = ranges.lower(Map.of());
        double[] high = ranges.upper(Map.of());
        double[] x = new double[low.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = low[i] + (0.2 + 0.6 * random.nextDouble()) * (high[i] - low[i]);
        }
        double top = branch == Branch.FOILING ? 8 + 16 * random.nextDouble() : 2 + 6 * random.nextDouble();
        x[Variable.BOAT_SPEED.ordinal()] = top / Variable.BOAT_SPEED.scale();
        x[Variable.LEEWAY.ordinal()] = Units.fromDegrees(1 + 4 * random.nextDouble()) / Variable.LEEWAY.scale();
        x[Variable.RUDDER.ordinal()] *= 0.3;
        x[Variable.SHEET.ordinal()] = Units.fromDegrees(2 + 12 * random.nextDouble()) / Variable.SHEET.scale();
        x[Variable.CREW_PLACE.ordinal()] = 0.5;
        return x;
    }

    private static int compare(Functions functions, double[] x, String what) {
        double[][] slopes = new double[TrimProblem.ROW][x.length];
        if (!functions.addSlopes(SailingState.ofScaled(x), new boolean[x.length], slopes)) {
            return 0;
        }
        int compared = 0;
        for (int i = 0; i < x.length; i++) {
            double[] wide = central(functions, x, i, STEP);
            double[] narrow = central(functions, x, i, 0.5 * STEP);
            if (wide.length == 0 || narrow.length == 0) {
                continue;
            }
            compared++;
            for (int f = 0; f < slopes.length; f++) {
                double error = 4 * Math.abs(wide[f] - narrow[f]) + ROUNDING * (1 + Math.abs(narrow[f]));
                assertEquals(narrow[f], slopes[f][i], error, what + ", " + name(f) + " by " + Variable.values()[i]);
            }
        }
        return compared;
    }

    private static String name(int f) {
        return f < 1 + TrimProblem.EQUATIONS
                ? "equation " + f
                : LimitRow.values()[f - 1 - TrimProblem.EQUATIONS].name();
    }

    private static double[] central(Functions functions, double[] x, int i, double step) {
        List<double[]> rows = new ArrayList<>();
        for (int way = -1; way <= 1; way += 2) {
            double[] moved = x.clone();
            moved[i] += way * step;
            double[] row = functions.at(SailingState.ofScaled(moved));
            if (row == null) {
                return new double[0];
            }
            rows.add(row);
        }
        double[] slope = new double[rows.get(0).length];
        for (int f = 0; f < slope.length; f++) {
            slope[f] = (rows.get(1)[f] - rows.get(0)[f]) / (2 * step);
        }
        return slope;
    }
}
