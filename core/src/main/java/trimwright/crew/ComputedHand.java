package trimwright.crew;

import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;

/** The computed trimmer of the simulated races, who knows the targets: the yardstick of every drill. */
public final class ComputedHand implements WingHand {
    private final Trimmer trimmer;

    /** @param tack +1 with the wind from starboard, -1 from port */
    public ComputedHand(WingSpec wing, Habits habits, int tack) {
        trimmer = new Trimmer(wing.trim(), habits, tack);
    }

    @Override
    public WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        trimmer.work(sight, aim, turn, /* power= */ 1, grip, dt);
        return new WingOrder(
                trimmer.sheet(), trimmer.camber(), trimmer.twist(), trimmer.flap(), trimmer.side(), trimmer.inverted());
    }
}
