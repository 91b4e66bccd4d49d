package trimwright.platform;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.water.WaterState;

/**
 * Newton's method with central differences and Gauss's elimination on the sums of {@link IndependentBalance}: slow, and without a
 * line of the code that balances the boat.
 */
public final class SlowSolver {
    private static final int ROUNDS = 40;
    private static final int HALVINGS = 8;

    /** Of a variable's scale: far above what is left in the wing's flow, far below any curve. */
    private static final double STEP = 1e-4;

    private final Boat boat;
    private final WingSpec wing;
    private final AirState air;
    private final WaterState water;
    private final Conditions conditions;

    public SlowSolver(Boat boat, WingSpec wing, AirState air, WaterState water, Conditions conditions) {
        this.boat = boat;
        this.wing = wing;
        this.air = air;
        this.water = water;
        this.conditions = conditions;
    }

    /** The state with six variables settled so that no sum is over {@code left}; null where it is not come to. */
    public @Nullable SailingState solve(SailingState start, List<Variable> unknowns, double left) {
        SailingState state = start;
        double[] sums = sums(state);
        for (int round = 0; round < ROUNDS && sums != null; round++) {
            if (IndependentBalance.largest(sums) < left) {
                return state;
            }
            double[] change = change(state, sums, unknowns);
            if (change == null) {
                return null;
            }
            double share = 1;
            SailingState next = moved(state, unknowns, change, share);
            double[] after = sums(next);
            for (int i = 0; i < HALVINGS && !isLess(after, sums); i++) {
                share /= 2;
                next = moved(state, unknowns, change, share);
                after = sums(next);
            }
            state = next;
            sums = after;
        }
        return null;
    }

    private static boolean isLess(double @Nullable [] after, double[] before) {
        return after != null && IndependentBalance.largest(after) < IndependentBalance.largest(before);
    }

    private double @Nullable [] sums(SailingState state) {
        try {
            return IndependentBalance.residuals(boat, wing, air, water, state, conditions);
        } catch (IllegalStateException noFlow) {
            return null;
        }
    }

    private static SailingState moved(SailingState state, List<Variable> unknowns, double[] change, double share) {
        SailingState moved = state;
        for (int i = 0; i < change.length; i++) {
            Variable variable = unknowns.get(i);
            moved = moved.with(variable, state.get(variable) + share * change[i]);
        }
        return moved;
    }

    private double @Nullable [] change(SailingState state, double[] sums, List<Variable> unknowns) {
        int n = sums.length;
        double[][] rows = new double[n][n + 1];
        for (int j = 0; j < n; j++) {
            Variable variable = unknowns.get(j);
            double step = STEP * variable.scale();
            double[] more = sums(state.with(variable, state.get(variable) + step));
            double[] less = sums(state.with(variable, state.get(variable) - step));
            if (more == null || less == null) {
                return null;
            }
            for (int i = 0; i < n; i++) {
                rows[i][j] = (more[i] - less[i]) / (2 * step);
            }
        }
        for (int i = 0; i < n; i++) {
            rows[i][n] = -sums[i];
        }
        return eliminated(rows);
    }

    private static double @Nullable [] eliminated(double[][] rows) {
        int n = rows.length;
        for (int k = 0; k < n; k++) {
            int best = k;
            for (int i = k + 1; i < n; i++) {
                best = Math.abs(rows[i][k]) > Math.abs(rows[best][k]) ? i : best;
            }
            double[] pivot = rows[best];
            rows[best] = rows[k];
            rows[k] = pivot;
            if (pivot[k] == 0) {
                return null;
            }
            for (int i = 0; i < n; i++) {
                double factor = i == k ? 0 : rows[i][k] / pivot[k];
                for (int j = k; factor != 0 && j <= n; j++) {
                    rows[i][j] -= factor * pivot[j];
                }
            }
        }
        double[] x = new double[n];
        for (int k = 0; k < n; k++) {
            x[k] = rows[k][n] / rows[k][k];
        }
        return x;
    }
}
