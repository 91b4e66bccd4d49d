package trimwright.crew;

import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;

/** The computed trimmer of the simulated races, who knows the targets: the yardstick of every drill. */
public final class ComputedHand implements WingHand {
    private final Habits habits;
    private final Trimmer trimmer;
    private double power = 1;

    /** @param tack +1 with the wind from starboard, -1 from port */
    public ComputedHand(WingSpec wing, Habits habits, int tack) {
        this.habits = habits;
        trimmer = new Trimmer(wing.trim(), habits, tack);
    }

    private ComputedHand(ComputedHand of) {
        habits = of.habits;
        trimmer = of.trimmer.copy(habits);
        power = of.power;
    }

    /** One that goes on from here by itself. */
    public ComputedHand copy() {
        return new ComputedHand(this);
    }

    /** How far the sheet is eased beyond its trim for a share of full power (rad). */
    public static double easeFor(double power) {
        return (1 - power) * Trimmer.LUFFED;
    }

    /** From now on that share of full power, 0 to 1: less eases the sheet. */
    public void power(double share) {
        power = share;
    }

    @Override
    public WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        trimmer.work(sight, aim, turn, power, grip, dt);
        return new WingOrder(
                trimmer.sheet(), trimmer.camber(), trimmer.twist(), trimmer.flap(), trimmer.side(), trimmer.inverted());
    }
}
