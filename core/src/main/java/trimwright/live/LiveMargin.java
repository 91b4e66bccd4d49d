package trimwright.live;

import org.jspecify.annotations.Nullable;
import trimwright.aim.Aim;
import trimwright.aim.AimFinder;
import trimwright.aim.AimLevels;
import trimwright.aim.Gustiness;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.TargetPoint;

/**
 * How far below its limits a target is sailed in the unrest of the wind as it is measured: the aim, found anew every few seconds and
 * wherever wind or angle have changed. Between, what it takes off the target stays. Not for use by two threads.
 */
final class LiveMargin {
    /** Seconds after which it is found anew (chosen: turbulence is that of minutes). */
    private static final double SECONDS = 10;

    /** Changes of wind (m/s) and angle (rad) from which on it is found anew (chosen: a book's step). */
    private static final double WIND = 1;

    private static final double ANGLE = Math.toRadians(5);

    private final Platform platform;
    private @Nullable TargetPoint found;
    private Margin last = Margin.NONE;
    private long nextNanos = Long.MIN_VALUE;

    LiveMargin(Platform platform) {
        this.platform = platform;
    }

    /**
     * What is taken off a target.
     *
     * @param moment to be carried over the target's (-), at most 1
     * @param speed at the aim over the target's (-), at most 1
     * @param camber at the aim less the target's (rad)
     * @param twist likewise
     * @param sheet likewise
     * @param heel likewise
     */
    record Margin(double moment, double speed, double camber, double twist, double sheet, double heel) {
        /** Nothing: a target far below its limits, or one of which nothing is known. */
        static final Margin NONE = new Margin(1, 1, 0, 0, 0, 0);
    }

    /**
     * At a place of sailing.
     *
     * @param now (ns)
     * @param point its target
     * @param turbulence as it is measured (-); NaN: not known yet, the usual one
     */
    Margin at(long now, TargetPoint point, double turbulence) {
        if (now >= nextNanos || isElsewhere(point)) {
            nextNanos = now + (long) (SECONDS * 1e9);
            found = point;
            last = find(point, within(turbulence));
        }
        return last;
    }

    private boolean isElsewhere(TargetPoint point) {
        TargetPoint before = found;
        return before == null
                || Math.abs(point.trueWindSpeed() - before.trueWindSpeed()) > WIND
                || Math.abs(point.trueWindAngle() - before.trueWindAngle()) > ANGLE;
    }

    /** The turbulence that aims are found for: between those that a person may say. */
    static double within(double turbulence) {
        return Double.isNaN(turbulence)
                ? Gustiness.TURBULENCE
                : Math.max(Gustiness.LEAST_TURBULENCE, Math.min(Gustiness.MOST_TURBULENCE, turbulence));
    }

    private Margin find(TargetPoint point, double turbulence) {
        AimFinder finder =
                new AimFinder(platform, Gustiness.of(turbulence, platform.boat().limits()));
        Aim aim = finder.aimAt(point);
        double carried = point.getTarget().loads().rightingMoment();
        if (aim == null) {
            // No state here leaves the room: what the target's own trim would leave is still the most to carry.
            AimLevels levels = finder.levelsAt(point);
            double moment = levels == null ? 1 : levels.momentAim() / carried;
            return new Margin(Math.min(1, moment), 1, 0, 0, 0, 0);
        }
        SailingState state = aim.state();
        SailingState target = point.state();
        return new Margin(
                Math.min(1, aim.levels().momentAim() / carried),
                aim.speedShare(),
                off(state, target, Variable.CAMBER),
                off(state, target, Variable.TWIST),
                off(state, target, Variable.SHEET),
                off(state, target, Variable.HEEL));
    }

    private static double off(SailingState state, SailingState target, Variable variable) {
        return state.get(variable) - target.get(variable);
    }
}
