package trimwright.target;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;

/** Best states on the hulls at all angles of one wind: from close to the wind outwards, and from far off it inwards. */
final class HullSweep {
    /** Share of the speed by which another answer must be faster (-): well over what the search leaves open; chosen. */
    private static final double FASTER = 1e-4;

    private final Task task;
    private final List<Double> angles;
    private final Sweep sweep;
    private final @Nullable Boolean[] stalled;

    /** @param task on the hulls */
    HullSweep(Task task, List<Double> angles) {
        this.task = task;
        this.angles = angles;
        sweep = new Sweep(task, angles);
        stalled = new Boolean[angles.size()];
    }

    Sweep sweep() {
        return sweep;
    }

    /** Both ways until the boat takes off, between which she does so too. */
    void go() {
        int low = inwards(0, 1);
        if (isTakenOffAt(low)) {
            int high = inwards(farthest(low), -1);
            if (high > low && isTakenOffAt(high)) {
                sweep.noteTakeOff(low, high);
            }
        }
        for (int i = 0; i < angles.size(); i++) {
            tryFlat(i);
            boolean unknown = sweep.outcomeAt(i) == Outcome.NONE || sweep.outcomeAt(i) == Outcome.NOT_TRIED;
            if (unknown && isStalledAt(i)) {
                sweep.noteStalled(i);
            }
        }
    }

    /**
     * Where the stall margin binds, a twisted wing and one that twists little are both best among their neighbours, and no small step
     * leads from one to the other: the search is begun once more without twist, and the faster answer stays.
     */
    private void tryFlat(int i) {
        Answer answer = sweep.at(i);
        if (answer == null || task.isHeld(Variable.TWIST) || !Standing.bindsAtStall(answer)) {
            return;
        }
        SailingState state = SailingState.ofScaled(answer.x());
        Answer flat = task.atAngle(angles.get(i), state.with(Variable.TWIST, 0));
        boolean faster = flat.isConverged()
                && SailingState.ofScaled(flat.x()).get(Variable.BOAT_SPEED)
                        > state.get(Variable.BOAT_SPEED) * (1 + FASTER);
        if (faster) {
            sweep.note(i, flat);
        }
    }

    /** Goes one way until the boat takes off, from a guess wherever no neighbour leads on; returns where it ended. */
    private int inwards(int outermost, int way) {
        int i = outermost;
        while (i >= 0 && i < angles.size() && !isTakenOffAt(i)) {
            if (sweep.outcomeAt(i) == Outcome.NOT_TRIED && !(way > 0 && isBeyondStall(i))) {
                sweep.note(i, fromGuess(i));
            }
            Answer answer = sweep.at(i);
            if (answer != null) {
                sweep.go(answer, i + way, way);
            }
            if (!isTakenOffAt(i)) {
                i += way;
            }
        }
        return i;
    }

    /** Farther off the wind than an angle without an answer, with the wing stalled at both: there is none here either. */
    private boolean isBeyondStall(int i) {
        boolean none = i > 0 && (sweep.outcomeAt(i - 1) == Outcome.NONE || sweep.outcomeAt(i - 1) == Outcome.NOT_TRIED);
        return none && isStalledAt(i - 1) && isStalledAt(i);
    }

    /**
     * The farthest angle off the wind from which to go inwards. Where she would stay with a stalled wing, those without an answer
     * lie outside those with one, so that by halving not all of them need be searched.
     */
    private int farthest(int low) {
        int first = angles.size();
        while (first - 1 > low && isStalledAt(first - 1)) {
            first--;
        }
        int last = angles.size() - 1;
        while (first <= last) {
            int middle = (first + last + 1) / 2;
            sweep.note(middle, fromGuess(middle));
            if (sweep.outcomeAt(middle) == Outcome.NONE) {
                last = middle - 1;
            } else {
                first = middle + 1;
            }
        }
        return last;
    }

    private Answer fromGuess(int i) {
        double wind = task.conditions().wind().referenceSpeed();
        return task.atAngle(angles.get(i), FirstGuess.onHulls(task.platform(), wind, angles.get(i)));
    }

    private boolean isTakenOffAt(int i) {
        return i < angles.size() && i >= 0 && sweep.outcomeAt(i) == Outcome.TAKES_OFF;
    }

    private boolean isStalledAt(int i) {
        Boolean known = stalled[i];
        if (known == null) {
            known = EasedWing.isStalledOnHulls(task, angles.get(i));
            stalled[i] = known;
        }
        return known;
    }
}
