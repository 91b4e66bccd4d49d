package trimwright.target;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.TrimRange;
import trimwright.platform.Conditions;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.platform.WingLoad;
import trimwright.platform.WingLoadChange;

/** The wing's share: its forces and moments, stall margins, the sheet. Remembers the last load as a start for the next. */
final class WingFunctions implements Functions {
    static final List<Variable> VARIABLES = List.of(
            Variable.BOAT_SPEED,
            Variable.LEEWAY,
            Variable.SHEET,
            Variable.CAMBER,
            Variable.TWIST,
            Variable.TWIST_MID_RATIO,
            Variable.HEEL,
            Variable.RIDE_HEIGHT,
            Variable.PITCH,
            Variable.TRUE_WIND_ANGLE);

    /** A margin to stall of this much (rad) more or less is large. */
    static final double MARGIN_SCALE = 0.1;

    private final Platform platform;
    private final Conditions conditions;
    private @Nullable WingLoad last;
    private @Nullable SailingState lastState;

    WingFunctions(Platform platform, Conditions conditions) {
        this.platform = platform;
        this.conditions = conditions;
    }

    /** The load in a state, the next of those computed before: near stall a wing's flow depends on where it comes from. */
    @Nullable
    WingLoad loadAt(SailingState state) {
        if (lastState != null && lastState.isSame(state)) {
            return last;
        }
        WingLoad load = platform.wingLoad(state, conditions, last);
        if (load != null) {
            last = load;
            lastState = state;
        }
        return load;
    }

    /** The same wing in other conditions, its flow begun from this one's last. */
    WingFunctions in(Conditions other) {
        WingFunctions functions = new WingFunctions(platform, other);
        functions.last = last;
        return functions;
    }

    @Override
    public List<Variable> variables() {
        return VARIABLES;
    }

    @Override
    public double @Nullable [] at(SailingState state) {
        WingLoad load = loadAt(state);
        if (load == null) {
            return null;
        }
        double[] row = new double[TrimProblem.ROW];
        TrimProblem.putForces(row, load.force(), platform);
        TrimRange range = platform.wing().trim();
        double headFlap = state.get(Variable.CAMBER) - state.get(Variable.TWIST);
        row[LimitRow.HEAD_FLAP.place()] = (headFlap - range.headFlapMin()) / Variable.TWIST.scale();
        double pull = load.sheetPull() / platform.wing().sheet().loadMax();
        row[LimitRow.SHEET_LOAD_MAX.place()] = 1 - pull;
        row[LimitRow.SHEET_SLACK.place()] = pull;
        for (int k = 0; k < LimitRow.STALL_PLACES; k++) {
            row[LimitRow.STALL_1.place() + k] =
                    (load.flow().stallMargin(strip(k, load)) - range.stallMarginMin()) / MARGIN_SCALE;
        }
        return row;
    }

    private static int strip(int place, WingLoad load) {
        return place * (load.flow().strips() - 1) / (LimitRow.STALL_PLACES - 1);
    }

    @Override
    public boolean addSlopes(SailingState state, boolean[] fixed, double[][] slopes) {
        WingLoad load = loadAt(state);
        if (load == null) {
            return false;
        }
        List<Variable> free = free(fixed);
        WingLoadChange[] changes = platform.wingLoadChanges(state, conditions, load, free);
        if (changes == null) {
            return false;
        }
        for (int a = 0; a < changes.length; a++) {
            Variable variable = free.get(a);
            int i = variable.ordinal();
            double scale = variable.scale();
            TrimProblem.putForces(slopes, i, scale, changes[a].force(), platform);
            double pull =
                    scale * changes[a].sheetPull() / platform.wing().sheet().loadMax();
            slopes[LimitRow.SHEET_LOAD_MAX.place()][i] -= pull;
            slopes[LimitRow.SHEET_SLACK.place()][i] += pull;
            for (int k = 0; k < LimitRow.STALL_PLACES; k++) {
                slopes[LimitRow.STALL_1.place() + k][i] +=
                        scale * changes[a].stallMargin(strip(k, load)) / MARGIN_SCALE;
            }
        }
        putHeadFlap(Variable.CAMBER, 1, fixed, slopes);
        putHeadFlap(Variable.TWIST, -1, fixed, slopes);
        return true;
    }

    private static void putHeadFlap(Variable variable, int sign, boolean[] fixed, double[][] slopes) {
        int i = variable.ordinal();
        if (!fixed[i]) {
            slopes[LimitRow.HEAD_FLAP.place()][i] += sign * variable.scale() / Variable.TWIST.scale();
        }
    }

    /** The variables of the wing that may move. */
    static List<Variable> free(boolean[] fixed) {
        List<Variable> free = new ArrayList<>();
        for (Variable variable : VARIABLES) {
            if (!fixed[variable.ordinal()]) {
                free.add(variable);
            }
        }
        return free;
    }
}
