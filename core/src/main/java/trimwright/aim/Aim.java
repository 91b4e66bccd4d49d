package trimwright.aim;

import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;

/**
 * Where a target is really sailed: the state, best for the same, that keeps righting moment and sheet load so far below their limits
 * that the day's gusts pass them as seldom as asked. The target itself where that lies low enough.
 *
 * @param point the target
 * @param state the state to sail
 * @param levels moment and load in it, and what they are aimed at
 */
public record Aim(TargetPoint point, SailingState state, AimLevels levels) {
    /** Speed through the water in it (m/s). */
    public double boatSpeed() {
        return state.get(Variable.BOAT_SPEED);
    }

    /** Speed along the wind in it (m/s), negative down the wind. */
    public double madeGood() {
        return boatSpeed() * StrictMath.cos(state.get(Variable.TRUE_WIND_ANGLE));
    }

    /** What the margin costs of the speed that the target is best for (m/s), 0 or more. */
    public double lost() {
        return point.mode() == TargetMode.ANGLE
                ? Math.max(0, point.getTarget().boatSpeed() - boatSpeed())
                : Math.max(0, point.getTarget().velocityMadeGood() - Math.abs(madeGood()));
    }

    /** That speed over the target's (-), 1 or less. */
    public double speedShare() {
        double best = point.mode() == TargetMode.ANGLE
                ? point.getTarget().boatSpeed()
                : point.getTarget().velocityMadeGood();
        return 1 - lost() / best;
    }

    /** Whether the target is too close to a limit for the day's gusts, so that something else is sailed. */
    public boolean isBelowTarget() {
        return !state.isSame(point.state());
    }
}
