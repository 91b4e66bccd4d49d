package trimwright.target;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;

/**
 * A share of the functions of a {@link TrimProblem}: the row is the sum of all shares. Each share depends on its own
 * variables only, so that the dear one (the wing) is asked no more often than needed.
 */
interface Functions {
    /** The variables that this share depends on. */
    List<Variable> variables();

    /** Its row of values, or null where the model has no answer. */
    double @Nullable [] at(SailingState state);

    /**
     * Adds its first derivatives by the scaled variables to {@code slopes[function][variable]}, those of fixed variables left out;
     * false where the model has no answer.
     */
    boolean addSlopes(SailingState state, boolean[] fixed, double[][] slopes);
}
