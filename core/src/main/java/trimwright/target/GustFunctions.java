package trimwright.target;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.air.WindProfile;
import trimwright.platform.Conditions;
import trimwright.platform.ForceSum;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.platform.WingLoad;
import trimwright.platform.WingLoadChange;

/**
 * Heeling moment of the wing in the first instant of a gust: a tenth more wind, trim and boat as they were. With the
 * moment before the gust held, the trim with the least of it is the one that a gust disturbs least.
 */
final class GustFunctions implements Functions {
    /** Wind of the gust over the mean (-); chosen, a common strength at a turbulence of 6 to 10 per cent. */
    private static final double GUST = 1.1;

    private final Platform platform;
    private final Conditions gust;
    private @Nullable WingLoad last;
    private @Nullable SailingState lastState;

    GustFunctions(Platform platform, Conditions conditions) {
        this.platform = platform;
        WindProfile wind = WindProfile.overSea(GUST * conditions.wind().referenceSpeed());
        this.gust = new Conditions(wind, conditions.windward(), conditions.foils());
    }

    @Override
    public List<Variable> variables() {
        return WingFunctions.VARIABLES;
    }

    @Override
    public double @Nullable [] at(SailingState state) {
        WingLoad load = loadAt(state);
        if (load == null) {
            return null;
        }
        double[] row = new double[TrimProblem.ROW];
        row[0] = moment(load.force());
        return row;
    }

    @Override
    public boolean addSlopes(SailingState state, boolean[] fixed, double[][] slopes) {
        WingLoad load = loadAt(state);
        List<Variable> free = WingFunctions.free(fixed);
        WingLoadChange[] changes = load == null ? null : platform.wingLoadChanges(state, gust, load, free);
        if (changes == null) {
            return false;
        }
        for (int a = 0; a < changes.length; a++) {
            Variable variable = free.get(a);
            slopes[0][variable.ordinal()] += variable.scale() * moment(changes[a].force());
        }
        return true;
    }

    /** Roll moment to leeward over weight times length (-). */
    private double moment(ForceSum force) {
        return -gust.windward().sign() * force.k() / (platform.weight() * platform.length());
    }

    private @Nullable WingLoad loadAt(SailingState state) {
        if (lastState != null && lastState.isSame(state)) {
            return last;
        }
        WingLoad load = platform.wingLoad(state, gust, last);
        if (load != null) {
            last = load;
            lastState = state;
        }
        return load;
    }
}
