package trimwright.raceday;

import java.util.List;
import trimwright.crew.Habits;
import trimwright.motion.MotionModel;
import trimwright.sim.TrueState;
import trimwright.target.TargetBook;

/** The small target book round 15 kn that other packages' tests use too. */
public final class LoneBoatBook {
    private LoneBoatBook() {}

    public static TargetBook get() {
        return LoneBoat.targets();
    }

    /** What is true each second of a boat alone in a race in steady wind, for that long (s). */
    public static List<TrueState> sailed(double seconds) {
        return LoneBoat.sail(Habits.NONE, MotionModel.STEP, seconds).truth();
    }
}
