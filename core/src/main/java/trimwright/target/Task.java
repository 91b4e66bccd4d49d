package trimwright.target;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.air.WindProfile;
import trimwright.platform.Balance;
import trimwright.platform.Conditions;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Accuracy;
import trimwright.target.search.Answer;
import trimwright.target.search.Search;

/**
 * Searches in one wind on one branch. Keeps flows and second derivatives as starts for the next search, so it belongs to
 * one thread; what is found does not depend on them beyond the tolerance of the search.
 */
final class Task {
    /** What others than the trimmer set: held where trims are compared. */
    private static final List<Variable> HELD_ON_RIDGE =
            List.of(Variable.HEEL, Variable.CREW_PLACE, Variable.TWIST_MID_RATIO, Variable.TRUE_WIND_ANGLE);

    /**
     * How far second derivatives serve (scaled); chosen: the search learns from the slopes that it meets how they have changed
     * since, so a tenth of the places serve for a seventh more steps than with new ones every 0.1 to 0.3.
     */
    private static final double FOILS_NEAR = 3;

    /** The same of hulls, which come out of the water over two centimetres, 0.04 of the scale of the ride height. */
    private static final double HULLS_NEAR = 1;

    private final Platform platform;
    private final Conditions conditions;
    private final Branch branch;
    private final Map<Variable, Double> held;
    private final Ranges ranges;
    private final WingFunctions wingFunctions;
    private final Share wing;
    private final Share water;
    private final Share gust;

    /** @param held controls that are not free, with their values */
    Task(Platform platform, Conditions conditions, Branch branch, Map<Variable, Double> held) {
        this.platform = platform;
        this.conditions = conditions;
        this.branch = branch;
        this.held = Map.copyOf(held);
        ranges = Ranges.of(platform, branch);
        wingFunctions = new WingFunctions(platform, conditions);
        wing = new Share(wingFunctions, FOILS_NEAR);
        double waterNear = branch == Branch.FOILING ? FOILS_NEAR : HULLS_NEAR;
        water = new Share(new WaterFunctions(platform, conditions, branch), waterNear);
        gust = new Share(new GustFunctions(platform, conditions), FOILS_NEAR);
    }

    Platform platform() {
        return platform;
    }

    Conditions conditions() {
        return conditions;
    }

    Map<Variable, Double> held() {
        return held;
    }

    Branch branch() {
        return branch;
    }

    /** The same boat, branch and held controls in other conditions. */
    Task in(Conditions other) {
        return new Task(platform, other, branch, held);
    }

    /** Best state at a true wind angle (rad), from a guess. */
    Answer atAngle(double angle, SailingState guess) {
        return Search.from(at(angle), guess.scaled(), Accuracy.FINE);
    }

    /** Best state at a true wind angle (rad), from a point and the multipliers of a neighbour. */
    Answer atAngle(double angle, double[] point, Answer neighbour) {
        return Search.from(at(angle), point, neighbour, Accuracy.FINE);
    }

    /** Best state with the angle free, from that at a fixed angle. */
    Answer alongWind(TargetMode mode, Answer neighbour) {
        TrimProblem problem = problem(Goal.speed(mode), held);
        Answer answer = Search.from(problem, neighbour.x(), neighbour, Accuracy.FINE);
        return answer.isConverged() ? answer : Search.from(problem, neighbour.x(), Accuracy.FINE);
    }

    /** Best state at a true wind angle (rad) by the speed along the wind, from a neighbour's. */
    Answer alongWindAt(TargetMode mode, double angle, Answer neighbour) {
        return Search.from(problem(Goal.speed(mode), fixedAt(angle)), neighbour.x(), neighbour, Accuracy.FINE);
    }

    /** Righting moment over weight times length (-). */
    double momentOf(SailingState state) {
        return platform.rightingMoment(state, conditions, platform.waterLoad(state, conditions))
                / (platform.weight() * platform.length());
    }

    /**
     * Drives a goal with heel, crew, shape of twist and angle held as they are in a best answer.
     *
     * @param start where to begin
     * @param neighbour answer of the same goal beside another best answer, null for none
     */
    Answer onRidge(Goal goal, Answer best, double[] start, @Nullable Answer neighbour) {
        SailingState state = SailingState.ofScaled(best.x());
        Map<Variable, Double> fixed = new EnumMap<>(Variable.class);
        for (Variable variable : HELD_ON_RIDGE) {
            fixed.put(variable, state.get(variable));
        }
        fixed.putAll(held);
        TrimProblem problem = problem(goal, fixed);
        Accuracy accuracy = goal.kind() == Goal.Kind.GUST ? Accuracy.FINE : Accuracy.ROUGH;
        return neighbour == null
                ? Search.from(problem, start, accuracy)
                : Search.from(problem, start, neighbour, accuracy);
    }

    /** All loads in a state that a search of this task has found, with the flow that it found; null where there is none. */
    @Nullable
    Balance balanceOf(SailingState state) {
        return platform.balance(state, conditions, wingFunctions.loadAt(state));
    }

    /** All functions of the best speed with nothing held, to be asked for values and slopes. */
    TrimProblem free() {
        return problem(Goal.speed(TargetMode.ANGLE), Map.of());
    }

    /** Function, equations and limits of the best speed of a mode at a scaled state; null where the model has no answer. */
    double @Nullable [] rowAt(TargetMode mode, double[] x) {
        return problem(Goal.speed(mode), held).valuesAt(x);
    }

    /** As {@link #rowAt}, in a wind that is so many times this one's, the flow begun from this task's last. */
    double @Nullable [] rowInWind(double factor, TargetMode mode, double[] x) {
        WindProfile wind = WindProfile.overSea(factor * conditions.wind().referenceSpeed());
        Conditions other = new Conditions(wind, conditions.windward(), conditions.foils());
        List<Share> shares = List.of(
                new Share(wingFunctions.in(other), 0),
                new Share(new WaterFunctions(platform, other, branch), 0),
                new Share(new GoalFunctions(Goal.speed(mode)), 0));
        return new TrimProblem(shares, ranges, held).valuesAt(x);
    }

    boolean isHeld(Variable variable) {
        return held.containsKey(variable);
    }

    /** The problem of the best state at a true wind angle (rad). */
    TrimProblem at(double angle) {
        return problem(Goal.speed(TargetMode.ANGLE), fixedAt(angle));
    }

    private Map<Variable, Double> fixedAt(double angle) {
        Map<Variable, Double> fixed = new EnumMap<>(Variable.class);
        fixed.putAll(held);
        fixed.put(Variable.TRUE_WIND_ANGLE, angle);
        return fixed;
    }

    private TrimProblem problem(Goal goal, Map<Variable, Double> fixed) {
        List<Share> shares = new ArrayList<>(List.of(wing, water, new Share(new GoalFunctions(goal), FOILS_NEAR)));
        if (goal.kind() == Goal.Kind.GUST) {
            shares.add(gust);
        }
        return new TrimProblem(shares, ranges, fixed);
    }
}
