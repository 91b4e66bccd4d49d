package trimwright.target;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.air.WindProfile;
import trimwright.boat.Side;
import trimwright.platform.Balance;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Accuracy;
import trimwright.target.search.Answer;
import trimwright.target.search.Search;

/**
 * The fastest way to sail where a target is sailed with less righting moment than it carries: all that is free may change, the crew
 * stays as far out as that asks. The sheet's limit is that of the platform. Each answer begins at the last one; not for use by two
 * threads.
 */
public final class BelowLimits {
    /** Second derivatives serve for all searches about one target; chosen, as far as those of foils do in {@link Task}. */
    private static final double NEAR = 3;

    private final Platform platform;
    private final TargetPoint point;
    private final Map<Variable, Double> held;
    private final Conditions conditions;
    private final WingFunctions wingFunctions;
    private final Share wing;
    private final Share water;
    private final Ranges ranges;
    private @Nullable Answer last;

    /**
     * @param platform of the target, perhaps with another limit of the sheet
     * @param held controls that the target holds, with their values (SI)
     * @param foils that it has down
     * @param point a solved target
     */
    public BelowLimits(Platform platform, Map<Variable, Double> held, FoilSet foils, TargetPoint point) {
        this.platform = platform;
        this.point = point;
        this.held = new EnumMap<>(Variable.class);
        this.held.putAll(held);
        if (point.mode() == TargetMode.ANGLE) {
            this.held.put(Variable.TRUE_WIND_ANGLE, point.trueWindAngle());
        }
        conditions = new Conditions(WindProfile.overSea(point.trueWindSpeed()), Side.STARBOARD, foils);
        wingFunctions = new WingFunctions(platform, conditions);
        wing = new Share(wingFunctions, NEAR);
        water = new Share(WaterFunctions.withCeiling(platform, conditions, point.branch()), NEAR);
        ranges = Ranges.of(platform, point.branch());
    }

    /** The same search gone on with, the sheet allowed another largest load (N). */
    private BelowLimits(BelowLimits before, double sheetLoadMax) {
        platform = before.platform.withSheetLoadMax(sheetLoadMax);
        point = before.point;
        held = before.held;
        conditions = before.conditions;
        wingFunctions = new WingFunctions(platform, conditions);
        wing = new Share(wingFunctions, NEAR);
        water = before.water;
        ranges = before.ranges;
        last = before.last;
    }

    /** Goes on from the last answer, the sheet allowed another largest load (N). */
    public BelowLimits withSheetLoadMax(double load) {
        return new BelowLimits(this, load);
    }

    /** The best state that carries no more than a moment (N m), with all loads; null where none was found. */
    public @Nullable Balance bestUnder(double moment) {
        Goal goal = Goal.under(point.mode(), moment / (platform.weight() * platform.length()));
        Answer before = last;
        Answer found = before == null
                ? Search.from(problem(goal, held), start().scaled(), Accuracy.FINE)
                : Search.from(problem(goal, held), before.x(), before, Accuracy.FINE);
        if (!found.isConverged()) {
            found = fromFixedAngle(goal);
        }
        if (!found.isConverged()) {
            return null;
        }
        last = found;
        SailingState state = SailingState.ofScaled(found.x());
        return platform.balance(state, conditions, wingFunctions.loadAt(state));
    }

    /** A search with the angle free that gave up, begun anew from the best at the target's own angle. */
    private Answer fromFixedAngle(Goal goal) {
        Map<Variable, Double> fixed = new EnumMap<>(held);
        fixed.put(Variable.TRUE_WIND_ANGLE, point.trueWindAngle());
        Answer first = Search.from(problem(goal, fixed), start().scaled(), Accuracy.FINE);
        Answer free = first.isConverged() && point.mode() != TargetMode.ANGLE
                ? Search.from(problem(goal, held), first.x(), first, Accuracy.FINE)
                : first;
        return free.isConverged() ? free : first;
    }

    /** The target's state, the crew out, what is held as it is held. */
    private SailingState start() {
        SailingState start =
                point.state().with(Variable.CREW_PLACE, platform.boat().crew().yMax());
        for (Map.Entry<Variable, Double> entry : held.entrySet()) {
            start = start.with(entry.getKey(), entry.getValue());
        }
        return start;
    }

    private TrimProblem problem(Goal goal, Map<Variable, Double> fixed) {
        return new TrimProblem(List.of(wing, water, new Share(new GoalFunctions(goal), NEAR)), ranges, fixed);
    }
}
