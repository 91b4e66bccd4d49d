package trimwright.practice;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.crew.Sight;
import trimwright.motion.Mishap;
import trimwright.motion.MotionLoads;

/** Adds up what a drill counts. */
final class Tally {
    /** How long after its word a turn counts (s): chosen, by then a sound crew is back on its speed. */
    private static final double TURN = 20;

    private static final class Turn {
        private final double word;
        private double metres;
        private double least = Double.POSITIVE_INFINITY;
        private boolean touched;

        Turn(double word) {
            this.word = word;
        }
    }

    private final @Nullable StartTally start;
    private final Bounds bounds;
    private final double length;
    private final List<Turn> turns = new ArrayList<>();
    private double seconds;
    private double lost;
    private double wind;
    private double speed;
    private double mostHeel;
    private double touched;
    private double slid;
    private double elevator;
    private double sheet;
    private double stall;
    private DrillResult.End end = DrillResult.End.SAILED;

    Tally(Boat boat, WingSpec wing, Drill drill, @Nullable StartTask task) {
        start = task == null ? null : new StartTally(task);
        bounds = new Bounds(boat, wing);
        length = drill.seconds();
        drill.words().forEach(word -> turns.add(new Turn(word)));
    }

    void add(double time, Sight sight, boolean slides, double progress, double best, double dt) {
        MotionLoads loads = sight.loads();
        boolean touches = loads.hullLift() > 0;
        seconds += dt;
        lost += (1 - progress / best) * dt;
        if (start != null) {
            start.add(time, sight.speed(), progress, best, dt);
        }
        wind += sight.windSpeed() * dt;
        speed += sight.speed() * dt;
        double leeward = -sight.tack() * sight.state().pose().roll();
        mostHeel = Math.max(mostHeel, leeward);
        touched += touches ? dt : 0;
        slid += slides ? dt : 0;
        elevator += bounds.isPastElevator(loads) ? dt : 0;
        sheet += bounds.isPastSheet(loads) ? dt : 0;
        stall += loads.stallMargin() < 0 ? dt : 0;
        Mishap mishap = Mishap.of(sight.state().pose());
        if (mishap != null) {
            end = mishap == Mishap.NOSE_DIVED ? DrillResult.End.NOSE_DIVED : DrillResult.End.CAPSIZED;
        }
        for (Turn turn : turns) {
            if (time >= turn.word && time < turn.word + TURN) {
                turn.metres += (best - progress) * dt;
                turn.least = Math.min(turn.least, sight.speed());
                turn.touched |= touches;
            }
        }
    }

    double lost() {
        return start == null ? lost : start.lost();
    }

    /** Time to the gun at that time of the drill (s); NaN where there is none. */
    double toGun(double time) {
        return start == null ? Double.NaN : start.toGun(time);
    }

    /** Way to the line (m); NaN where there is none. */
    double toLine() {
        return start == null ? Double.NaN : start.toLine();
    }

    boolean isOver() {
        return end != DrillResult.End.SAILED;
    }

    DrillResult result() {
        double whole = Math.max(seconds, 1e-9);
        List<DrillResult.Turned> turned = turns.stream()
                .filter(turn -> turn.word < seconds)
                .map(turn -> new DrillResult.Turned(turn.word, turn.metres, turn.least, turn.touched))
                .toList();
        double unsailed = isOver() ? length - seconds : 0;
        return new DrillResult(
                seconds,
                lost() + unsailed,
                end,
                wind / whole,
                speed / whole,
                mostHeel,
                touched,
                slid,
                new DrillResult.OverLimits(elevator, sheet, stall),
                turned,
                start == null ? null : start.result());
    }
}
