package trimwright.target;

import org.jspecify.annotations.Nullable;

/**
 * One place in a target book: either a target or the reason why there is none.
 *
 * @param mode what it is best for
 * @param branch foiling or on the hulls
 * @param trueWindSpeed at 10 m (m/s)
 * @param trueWindAngle from the course through the water (rad), in [0, pi]; the best one found where the angle is free
 * @param target the target, null where there is none
 * @param reason why there is no target, one clause in the trade's words; null where there is one
 * @param slopes how the best speed changes around the point; null where that is not known
 */
public record TargetPoint(
        TargetMode mode,
        Branch branch,
        double trueWindSpeed,
        double trueWindAngle,
        @Nullable Target target,
        @Nullable String reason,
        @Nullable SpeedSlopes slopes) {
    public TargetPoint {
        if ((target == null) == (reason == null)) {
            throw new IllegalArgumentException("a point has either a target or a reason");
        }
    }

    public static TargetPoint solved(TargetMode mode, Branch branch, double wind, double angle, Target target) {
        return new TargetPoint(mode, branch, wind, angle, target, null, null);
    }

    public static TargetPoint unsolved(TargetMode mode, Branch branch, double wind, double angle, String reason) {
        return new TargetPoint(mode, branch, wind, angle, null, reason, null);
    }

    /** The same point with slopes. */
    public TargetPoint withSlopes(@Nullable SpeedSlopes known) {
        return new TargetPoint(mode, branch, trueWindSpeed, trueWindAngle, target, reason, known);
    }

    public boolean isSolved() {
        return target != null;
    }

    public boolean isFoiling() {
        return branch == Branch.FOILING;
    }

    /** The target; throws {@link IllegalStateException} if there is none. */
    public Target getTarget() {
        if (target == null) {
            throw new IllegalStateException("no target here: " + reason);
        }
        return target;
    }

    /** True wind angle from the bow (rad): the one to the course less the leeway. */
    public double trueWindAngleToBow() {
        return trueWindAngle - getTarget().attitude().leeway();
    }
}
