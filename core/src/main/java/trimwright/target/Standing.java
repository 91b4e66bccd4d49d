package trimwright.target;

import trimwright.platform.Variable;
import trimwright.target.search.Answer;

/** How an answer stands to its limits. */
final class Standing {
    /**
     * A limit binds when moving it out by a tenth of its scale would gain more than a tenth of this times the scale of the boat speed;
     * chosen: 5 mm/s.
     */
    private static final double BINDS = 1e-2;

    private Standing() {}

    /** On the hulls: the best state has the least weight on the hulls that counts as sailing on them. */
    static boolean isTakingOff(Task task, Answer answer) {
        return task.branch() == Branch.DISPLACEMENT
                && answer.violation() < 1e-6
                && answer.ofLimit(LimitRow.HULLS.ordinal()) > 1e-6;
    }

    static boolean binds(Answer answer, LimitRow row) {
        return answer.ofLimit(row.ordinal()) > BINDS;
    }

    /** Whether the margin to stall binds at any place of the wing. */
    static boolean bindsAtStall(Answer answer) {
        int first = LimitRow.STALL_1.ordinal();
        for (int k = 0; k < LimitRow.STALL_PLACES; k++) {
            if (binds(answer, LimitRow.values()[first + k])) {
                return true;
            }
        }
        return false;
    }

    static boolean bindsAtUpper(Answer answer, Variable variable) {
        return answer.ofUpper(variable.ordinal()) > BINDS;
    }
}
