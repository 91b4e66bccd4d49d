package trimwright.card;

import org.jspecify.annotations.Nullable;
import trimwright.air.WindProfile;
import trimwright.boat.Side;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.ForceSum;
import trimwright.platform.Platform;
import trimwright.platform.Pose;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.platform.WingLoad;

/**
 * The wing of a boat whose speed, course and attitude stay, while trim or wind change: the first moments after either. Each
 * answer begins from the flow of the one before, so an object is for one thread.
 */
final class TrimmedWing {
    private final Platform platform;
    private final SailingState state;
    private final Conditions conditions;
    private final Pose pose;
    private @Nullable WingLoad last;

    TrimmedWing(Platform platform, SailingState state, double wind) {
        this(platform, state, wind, 0);
    }

    /** As the state says, but in another wind (m/s), shifted aft (rad). */
    TrimmedWing(Platform platform, SailingState state, double wind, double shift) {
        this.platform = platform;
        this.state = state.with(Variable.TRUE_WIND_ANGLE, state.get(Variable.TRUE_WIND_ANGLE) + shift);
        conditions = new Conditions(WindProfile.overSea(wind), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
        pose = Pose.of(state, conditions.windward());
    }

    /** The wing with one control (rad) elsewhere, or null where its flow has no answer. */
    @Nullable
    Held with(Variable control, double value) {
        return in(state.with(control, value));
    }

    /** The wing as trimmed, or null. */
    @Nullable
    Held asTrimmed() {
        return in(state);
    }

    double get(Variable control) {
        return state.get(control);
    }

    private @Nullable Held in(SailingState other) {
        WingLoad load = platform.wingLoad(other, conditions, last);
        if (load == null) {
            return null;
        }
        last = load;
        ForceSum air = load.force();
        double ahead = pose.levelX(air.x(), air.y(), air.z());
        double abeam = pose.levelY(air.y(), air.z());
        double speed = state.get(Variable.BOAT_SPEED);
        double drive = (ahead * pose.ahead() + abeam * pose.abeam()) / speed;
        return new Held(
                load.turningMoment(),
                load.sheetPull(),
                platform.heelingMoment(other, conditions, load),
                drive,
                load.flow().stallMargin());
    }

    /**
     * What the wing does in one trim.
     *
     * @param turningMoment about the turning axis (N m), positive where it eases the wing
     * @param sheetPull at the wing (N), negative where the sheet is slack
     * @param heelingMoment about the leeward main foil (N m), positive to leeward
     * @param drive along the course (N)
     * @param stallMargin least along the wing (rad), negative where stalled
     */
    record Held(double turningMoment, double sheetPull, double heelingMoment, double drive, double stallMargin) {}
}
