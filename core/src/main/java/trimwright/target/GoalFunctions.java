package trimwright.target;

import java.util.List;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;

/** What is sought, and the floor under the speed. */
final class GoalFunctions implements Functions {
    private static final List<Variable> SPEED = List.of(Variable.BOAT_SPEED, Variable.TRUE_WIND_ANGLE);

    private final Goal goal;
    private final List<Variable> variables;

    GoalFunctions(Goal goal) {
        this.goal = goal;
        Variable extreme = goal.extreme();
        variables = extreme == null ? SPEED : List.of(Variable.BOAT_SPEED, Variable.TRUE_WIND_ANGLE, extreme);
    }

    @Override
    public List<Variable> variables() {
        return variables;
    }

    @Override
    public double[] at(SailingState state) {
        double[] row = new double[TrimProblem.ROW];
        row[0] = -goal.merit(state);
        row[LimitRow.SPEED_FLOOR.place()] = goal.speedOverFloor(state);
        row[LimitRow.MOMENT_FLOOR.place()] = -goal.momentFloor();
        return row;
    }

    @Override
    public boolean addSlopes(SailingState state, boolean[] fixed, double[][] slopes) {
        Variable extreme = goal.extreme();
        boolean isSpeed = goal.kind() == Goal.Kind.SPEED;
        for (Variable variable : SPEED) {
            int i = variable.ordinal();
            double by = fixed[i] ? 0 : goal.speedBy(state, variable) * variable.scale() / Variable.BOAT_SPEED.scale();
            slopes[0][i] -= isSpeed ? by : 0;
            slopes[LimitRow.SPEED_FLOOR.place()][i] += goal.hasFloor() ? by : 0;
        }
        if (extreme != null && !fixed[extreme.ordinal()]) {
            slopes[0][extreme.ordinal()] += goal.kind() == Goal.Kind.HIGH_END ? -1 : 1;
        }
        return true;
    }
}
