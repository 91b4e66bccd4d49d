package trimwright.target;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.air.WindProfile;
import trimwright.platform.Conditions;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.platform.WingLoad;

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
        WingLoad load = platform.wingLoad(state, gust, last);
        if (load == null) {
            return null;
        }
        last = load;
        double[] row = new double[TrimProblem.ROW];
        row[0] = -gust.windward().sign() * load.force().k() / (platform.weight() * platform.length());
        return row;
    }
}
