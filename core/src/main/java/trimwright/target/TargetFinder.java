package trimwright.target;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.platform.Balance;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;

/**
 * Computes target books. Each wind is one task of its own; a caller may run winds on as many threads as it likes and gets
 * the same book.
 */
public final class TargetFinder {
    /** The search keeps a limit to some 1e-6 of its scale, and the share is a tenth (-). */
    private static final double SHARE_ROUNDING = 1e-4;

    /** Angles that are tried away from the wind's axis, and their step (rad); chosen: a boat bears away so far to fly with less. */
    private static final int OFF_AXIS = 6;

    private static final double OFF_AXIS_STEP = Math.PI / 45;

    private final Platform platform;
    private final Map<Variable, Double> held;
    private final FoilSet foils;
    private final Rungs rungs;

    /**
     * @param platform boat with a wing
     * @param held controls that are not free, with their values (SI); empty where all are
     */
    public TargetFinder(Platform platform, Map<Variable, Double> held) {
        this(platform, held, FoilSet.LEEWARD_DOWN);
    }

    /** The same, on those main foils. */
    public TargetFinder(Platform platform, Map<Variable, Double> held, FoilSet foils) {
        this.platform = platform;
        this.held = Map.copyOf(held);
        this.foils = foils;
        this.rungs = WindTargets.rungs(platform, this.held, foils);
    }

    /**
     * All points of one wind.
     *
     * @param wind true wind speed at 10 m (m/s)
     * @param angles true wind angles from the course through the water (rad), rising
     */
    public List<TargetPoint> pointsAt(double wind, List<Double> angles) {
        return new WindTargets(platform, held, foils, wind, angles, rungs).find();
    }

    /**
     * The fastest state at an angle with more controls stuck, searched for from a state nearby: quicker than a book.
     *
     * @param branch foiling or on the hulls
     * @param wind true wind speed at 10 m (m/s)
     * @param near where to begin; its true wind angle is kept
     * @param stuck controls beside those that this finder holds, with their values (SI)
     * @return with all loads, or null where none was found
     */
    public @Nullable Balance bestNear(Branch branch, double wind, SailingState near, Map<Variable, Double> stuck) {
        Map<Variable, Double> all = new EnumMap<>(Variable.class);
        all.putAll(held);
        all.putAll(stuck);
        SailingState start = near;
        for (Map.Entry<Variable, Double> entry : all.entrySet()) {
            start = start.with(entry.getKey(), entry.getValue());
        }
        Task task = WindTargets.task(platform, all, foils, wind, branch);
        Answer answer = task.atAngle(near.get(Variable.TRUE_WIND_ANGLE), start);
        return answer.isConverged() ? task.balanceOf(SailingState.ofScaled(answer.x())) : null;
    }

    /**
     * The best state of a mode with more controls stuck: as {@link #bestNear}, and with the angle free where the mode leaves it so. Where
     * nothing holds at the angle of the state nearby, it is looked for farther off the wind's axis.
     */
    public @Nullable Balance bestOf(
            TargetMode mode, Branch branch, double wind, SailingState near, Map<Variable, Double> stuck) {
        if (mode == TargetMode.ANGLE) {
            return bestNear(branch, wind, near, stuck);
        }
        Map<Variable, Double> all = new EnumMap<>(Variable.class);
        all.putAll(held);
        all.putAll(stuck);
        Task task = WindTargets.task(platform, all, foils, wind, branch);
        for (int i = 0; i < OFF_AXIS; i++) {
            double angle =
                    near.get(Variable.TRUE_WIND_ANGLE) + i * OFF_AXIS_STEP * (mode == TargetMode.UPWIND ? 1 : -1);
            SailingState start = near.with(Variable.TRUE_WIND_ANGLE, angle);
            for (Map.Entry<Variable, Double> entry : all.entrySet()) {
                start = start.with(entry.getKey(), entry.getValue());
            }
            Answer fixed = task.atAngle(angle, start);
            if (fixed.isConverged()) {
                Answer free = task.alongWind(mode, fixed);
                return task.balanceOf(SailingState.ofScaled(free.isConverged() ? free.x() : fixed.x()));
            }
        }
        return null;
    }

    /** As {@link #bestNear} on the hulls, from a guess and with no neighbour. */
    public @Nullable Balance bestOnHulls(double wind, double angle) {
        return bestNear(Branch.DISPLACEMENT, wind, FirstGuess.onHulls(platform, wind, angle), Map.of());
    }

    /**
     * Whether a best state on the hulls has lifted so far off them that the boat does not stay there: they carry the least
     * share of the weight that counts as sailing on them.
     */
    public boolean isLiftedOff(Balance onHulls) {
        double share = onHulls.water().buoyancy() / platform.weight();
        return share < WaterFunctions.HULL_SHARE * (1 + SHARE_ROUNDING);
    }

    /** The book of a grid, wind after wind. */
    public TargetBook bookOf(TargetGrid grid) {
        List<List<TargetPoint>> winds = new ArrayList<>();
        for (double wind : grid.winds()) {
            winds.add(pointsAt(wind, grid.angles()));
        }
        return assemble(grid, winds);
    }

    /** The book from the points of each wind, in the order of the grid's winds. */
    public TargetBook assemble(TargetGrid grid, List<List<TargetPoint>> pointsOfWinds) {
        List<TargetPoint> points = new ArrayList<>();
        pointsOfWinds.forEach(points::addAll);
        return new TargetBook(platform.boat().name(), platform.wing().id(), Platform.MODEL_VERSION, grid, points);
    }
}
