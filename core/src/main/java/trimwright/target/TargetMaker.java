package trimwright.target;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;
import trimwright.platform.Balance;
import trimwright.platform.ForceSum;
import trimwright.platform.Pose;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;

/** Turns a found state into the target that people read. */
final class TargetMaker {
    private final Task task;
    private final RidgeEnds ends;

    TargetMaker(Task task) {
        this.task = task;
        this.ends = new RidgeEnds(task);
    }

    Task task() {
        return task;
    }

    /** The target of a best answer, or null where its state cannot be balanced again. */
    @Nullable
    Target targetOf(TargetMode mode, Answer answer, Set<TargetCaveat> caveats) {
        Ridge ridge = new Ridge(ends, mode, answer);
        SailingState shown = ridge.leastDisturbed();
        Balance balance = task.balanceOf(shown);
        if (balance == null) {
            return null;
        }
        EnumSet<TargetCaveat> all = EnumSet.noneOf(TargetCaveat.class);
        all.addAll(caveats);
        if (balance.wing().isSheetSlack()) {
            all.add(TargetCaveat.SLACK_SHEET);
        }
        if (task.branch() == Branch.DISPLACEMENT && balance.water().isHullOutsideSeries()) {
            all.add(TargetCaveat.HULL_OUTSIDE_SERIES);
        }
        double speed = shown.get(Variable.BOAT_SPEED);
        double along = speed * StrictMath.cos(shown.get(Variable.TRUE_WIND_ANGLE));
        Pose pose = Pose.of(shown, task.conditions().windward());
        ApparentWind apparent = new TrueWind(
                        task.conditions().wind().referenceSpeed(),
                        task.conditions().windward().sign() * shown.trueWindAngleToBow())
                .apparent(pose.ahead(), pose.abeam());
        return new Target(
                speed,
                Math.abs(along),
                Math.abs(apparent.angle()),
                apparent.speed(),
                trimOf(shown),
                ridge.bands(shown),
                attitudeOf(shown),
                loadsOf(balance, pose),
                limitsOf(answer),
                all);
    }

    /** How the best speed changes around a best answer, or null where the model has no answer beside it. */
    @Nullable
    SpeedSlopes slopesOf(TargetMode mode, Answer answer) {
        return Envelope.at(task, mode, answer);
    }

    private static TrimSetting trimOf(SailingState state) {
        return new TrimSetting(
                state.get(Variable.CAMBER),
                state.get(Variable.TWIST),
                state.get(Variable.TWIST_MID_RATIO),
                state.get(Variable.SHEET));
    }

    private static Attitude attitudeOf(SailingState state) {
        return new Attitude(
                state.get(Variable.HEEL),
                state.get(Variable.RIDE_HEIGHT),
                state.get(Variable.LEEWAY),
                state.get(Variable.PITCH),
                state.get(Variable.RUDDER),
                state.get(Variable.MAIN_RAKE),
                state.get(Variable.ELEVATOR),
                state.get(Variable.ELEVATOR_DIFFERENTIAL));
    }

    private Loads loadsOf(Balance balance, Pose pose) {
        ForceSum wing = balance.wing().force();
        double ahead = pose.levelX(wing.x(), wing.y(), wing.z());
        double abeam = pose.levelY(wing.y(), wing.z());
        double speed = Math.sqrt(pose.ahead() * pose.ahead() + pose.abeam() * pose.abeam());
        double drive = (ahead * pose.ahead() + abeam * pose.abeam()) / speed;
        double across = (ahead * pose.abeam() - abeam * pose.ahead()) / speed;
        double moment = balance.rightingMoment();
        return new Loads(
                balance.wing().sheetLoad(),
                balance.wing().turningMoment(),
                moment,
                moment / balance.rightingMomentWithCrewOut(),
                task.conditions().windward().sign() * across,
                drive);
    }

    private Set<TargetLimit> limitsOf(Answer answer) {
        EnumSet<TargetLimit> limits = EnumSet.noneOf(TargetLimit.class);
        for (LimitRow row : LimitRow.values()) {
            TargetLimit limit = row.limit();
            if (limit != null && Standing.binds(answer, row)) {
                limits.add(limit);
            }
        }
        addUpper(limits, answer, Variable.CREW_PLACE, TargetLimit.RIGHTING_MOMENT);
        addUpper(limits, answer, Variable.CAMBER, TargetLimit.CAMBER_MAX);
        addUpper(limits, answer, Variable.TWIST, TargetLimit.TWIST_MAX);
        addUpper(limits, answer, Variable.BOAT_SPEED, TargetLimit.SPEED_LIMIT);
        return limits;
    }

    private void addUpper(Set<TargetLimit> limits, Answer answer, Variable variable, TargetLimit limit) {
        if (!task.isHeld(variable) && Standing.bindsAtUpper(answer, variable)) {
            limits.add(limit);
        }
    }
}
