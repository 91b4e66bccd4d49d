package trimwright.target;

import org.jspecify.annotations.Nullable;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;

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

    /**
     * The state that the boat is in at this target; the crew's place, that no book holds, is in the middle. Throws {@link
     * IllegalStateException} if there is no target.
     */
    public SailingState state() {
        Target found = getTarget();
        TrimSetting trim = found.trim();
        Attitude attitude = found.attitude();
        return SailingState.upright()
                .with(Variable.BOAT_SPEED, found.boatSpeed())
                .with(Variable.TRUE_WIND_ANGLE, trueWindAngle)
                .with(Variable.CAMBER, trim.camber())
                .with(Variable.TWIST, trim.twist())
                .with(Variable.TWIST_MID_RATIO, trim.twistMidRatio())
                .with(Variable.SHEET, trim.sheet())
                .with(Variable.HEEL, attitude.heel())
                .with(Variable.RIDE_HEIGHT, attitude.rideHeight())
                .with(Variable.LEEWAY, attitude.leeway())
                .with(Variable.PITCH, attitude.pitch())
                .with(Variable.RUDDER, attitude.rudder())
                .with(Variable.MAIN_RAKE, attitude.mainRake())
                .with(Variable.ELEVATOR, attitude.elevator())
                .with(Variable.ELEVATOR_DIFFERENTIAL, attitude.elevatorDifferential());
    }

    /** True wind angle from the bow (rad): the one to the course less the leeway. */
    public double trueWindAngleToBow() {
        return trueWindAngle - getTarget().attitude().leeway();
    }
}
