package trimwright.target;

import org.jspecify.annotations.Nullable;
import trimwright.platform.SailingState;
import trimwright.target.search.Answer;

/**
 * The best speed made good of one branch, begun from the best angle of its sweep, and never worse than that. Where the search with
 * the angle free gets stuck, as it does where the stall margin binds and a section's slope breaks, angles are tried by golden section.
 */
final class BestAlong {
    /** Angles are narrowed down until they are so near (rad): chosen, a twentieth of a degree. */
    private static final double NEAR = Math.toRadians(0.05);

    /** Share of an interval from its end at which golden section looks. */
    private static final double GOLDEN = 0.5 * (3 - Math.sqrt(5));

    /** Speed made good (m/s) by which a search may end below its beginning: what it leaves itself. */
    private static final double ROUNDING = 1e-5;

    private final Task task;
    private final Sweep sweep;
    private final TargetMode mode;

    BestAlong(Task task, Sweep sweep, TargetMode mode) {
        this.task = task;
        this.sweep = sweep;
        this.mode = mode;
    }

    /** The best answer, on the hulls also one in which the boat takes off; null where no angle has any way made good. */
    @Nullable
    Answer find() {
        int start = sweep.bestOf(mode);
        Answer from = start < 0 ? null : sweep.at(start);
        if (from == null) {
            return null;
        }
        Answer free = free(from);
        return free != null ? free : amongAngles(start, from);
    }

    /** By the search with the angle free, null where it ends nowhere or worse than it began. */
    private @Nullable Answer free(Answer from) {
        Answer answer = task.alongWind(mode, from);
        boolean ends = Standing.isTakingOff(task, answer) || answer.isConverged();
        return ends && madeGood(answer) > madeGood(from) - ROUNDING ? answer : null;
    }

    /** By golden section between the neighbours of the best angle, each answer begun from the best so far. */
    Answer amongAngles(int start, Answer from) {
        double low = sweep.angleAt(start - 1);
        double high = sweep.angleAt(start + 1);
        double at = sweep.angleAt(start);
        // Anew, so that its multipliers are of the speed along the wind.
        Answer same = task.alongWindAt(mode, at, from);
        Answer best = same.isConverged() ? same : from;
        while (high - low > NEAR) {
            double next = at - low > high - at ? at - GOLDEN * (at - low) : at + GOLDEN * (high - at);
            Answer answer = task.alongWindAt(mode, next, best);
            boolean isBetter =
                    answer.isConverged() && !Standing.isTakingOff(task, answer) && madeGood(answer) > madeGood(best);
            // The worse of the two becomes the end of the interval on its side.
            double end = isBetter ? at : next;
            double kept = isBetter ? next : at;
            if (end < kept) {
                low = end;
            } else {
                high = end;
            }
            at = kept;
            best = isBetter ? answer : best;
        }
        return best;
    }

    /** Speed against the wind or down it (m/s). */
    private double madeGood(Answer answer) {
        return Goal.speed(mode).speed(SailingState.ofScaled(answer.x()));
    }
}
