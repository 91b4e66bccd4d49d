package trimwright.practice;

import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.crew.Sight;
import trimwright.motion.Mishap;
import trimwright.motion.MotionLoads;

/** What a boat must not pass, as gauges tell it while she sails. */
public record Bounds(Boat boat, WingSpec wing) {
    /** Over a limit by less counts as at it: the crew holds the elevator there. Chosen. */
    private static final double AT_LIMIT = 1.05;

    /** Whether an elevator pulls down by a twentieth or more beyond the boat file's limit. */
    public boolean isPastElevator(MotionLoads loads) {
        double down = -Math.min(loads.portElevator(), loads.starboardElevator());
        return down > AT_LIMIT * boat.limits().elevatorDownForce();
    }

    /** Whether the sheet's load at the wing is a twentieth or more beyond the largest that maker or class allows. */
    public boolean isPastSheet(MotionLoads loads) {
        return Math.abs(loads.turningMoment()) / wing.sheet().lever()
                > AT_LIMIT * wing.sheet().loadMax();
    }

    /** The larger of both loads, as share of what they may be before they count as past (-). */
    public double share(MotionLoads loads) {
        double down = -Math.min(loads.portElevator(), loads.starboardElevator())
                / boat.limits().elevatorDownForce();
        double pull = Math.abs(loads.turningMoment())
                / wing.sheet().lever()
                / wing.sheet().loadMax();
        return Math.max(down, pull) / AT_LIMIT;
    }

    /** Whether she has capsized or tripped over her bows. */
    public static boolean isCapsized(Sight sight) {
        return Mishap.of(sight.state().pose()) != null;
    }
}
