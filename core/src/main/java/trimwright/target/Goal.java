package trimwright.target;

import org.jspecify.annotations.Nullable;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;

/**
 * What a search makes as large as it can.
 *
 * @param kind what that is
 * @param mode the speed that counts
 * @param extreme the variable to be driven to an end of its range, where that is the goal
 * @param floor what must be kept meanwhile, null where nothing is
 */
record Goal(
        Kind kind,
        TargetMode mode,
        @Nullable Variable extreme,
        @Nullable Floor floor) {
    /**
     * What must be kept.
     *
     * @param speed least speed that counts (m/s)
     * @param moment least righting moment over weight times length (-); its negative where that has a ceiling
     */
    record Floor(double speed, double moment) {}

    enum Kind {
        SPEED,
        LOW_END,
        HIGH_END,
        /** Least heeling moment in a gust; {@link GustFunctions} adds it. */
        GUST
    }

    /** Makes the speed of the mode as large as it can be. */
    static Goal speed(TargetMode mode) {
        return new Goal(Kind.SPEED, mode, null, null);
    }

    /** Makes the speed of the mode as large as it can be with no more moment over weight times length than that (-). */
    static Goal under(TargetMode mode, double moment) {
        return new Goal(Kind.SPEED, mode, null, new Floor(0, -moment));
    }

    /** Drives a variable to one end above a floor. */
    static Goal end(Kind kind, TargetMode mode, Variable variable, Floor floor) {
        return new Goal(kind, mode, variable, floor);
    }

    static Goal gust(TargetMode mode, Floor floor) {
        return new Goal(Kind.GUST, mode, null, floor);
    }

    /** The speed that counts (m/s): through the water, against the wind or down it. */
    double speed(SailingState state) {
        double speed = state.get(Variable.BOAT_SPEED);
        double along = StrictMath.cos(state.get(Variable.TRUE_WIND_ANGLE));
        return mode == TargetMode.ANGLE ? speed : mode == TargetMode.UPWIND ? speed * along : -speed * along;
    }

    /** Derivative of that speed by a variable. */
    double speedBy(SailingState state, Variable variable) {
        double angle = state.get(Variable.TRUE_WIND_ANGLE);
        int way = mode == TargetMode.DOWNWIND ? -1 : 1;
        if (variable == Variable.BOAT_SPEED) {
            return mode == TargetMode.ANGLE ? 1 : way * StrictMath.cos(angle);
        }
        boolean turns = variable == Variable.TRUE_WIND_ANGLE && mode != TargetMode.ANGLE;
        return turns ? -way * state.get(Variable.BOAT_SPEED) * StrictMath.sin(angle) : 0;
    }

    boolean hasFloor() {
        return floor != null;
    }

    /** The goal in its scale. */
    double merit(SailingState state) {
        if (kind == Kind.SPEED) {
            return speed(state) / Variable.BOAT_SPEED.scale();
        }
        if (extreme == null) {
            return 0;
        }
        double value = state.get(extreme) / extreme.scale();
        return kind == Kind.HIGH_END ? value : -value;
    }

    /** Speed over the floor, scaled; a constant where there is none. */
    double speedOverFloor(SailingState state) {
        return floor == null ? 1 : (speed(state) - floor.speed()) / Variable.BOAT_SPEED.scale();
    }

    /** What is to be taken from the righting moment over weight times length; far below any where there is no floor. */
    double momentFloor() {
        return floor == null ? -10 : floor.moment();
    }
}
