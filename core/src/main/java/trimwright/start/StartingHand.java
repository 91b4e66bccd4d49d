package trimwright.start;

import java.util.function.DoubleConsumer;
import org.jspecify.annotations.Nullable;
import trimwright.crew.Aim;
import trimwright.crew.Sight;
import trimwright.crew.TurnOrder;
import trimwright.crew.WingHand;
import trimwright.crew.WingOrder;
import trimwright.motion.Pose;
import trimwright.practice.StartTask;

/**
 * A hand that holds a boat back before a start while it believes that there are seconds to spare. It keeps her on her foils for as
 * long as she would not cross early by that: off them she is slower than she has to be, and needs longer to her speed.
 */
public final class StartingHand implements WingHand {
    /** Share of power given up for each second to spare (1/s): chosen. */
    private static final double BY_SPARE = 0.2;

    /** Speed over that at which she falls off her foils within which power comes back (m/s): chosen, no power above, all of it below. */
    private static final double BAND = 1.5;

    /** How late after the gun she may come by staying on the foils (s): chosen. */
    private static final double MARGIN = 0.5;

    private final WingHand hand;
    private final DoubleConsumer power;
    private final Belief belief;
    private final double drops;
    private final StartTask task;
    private double began = Double.NaN;
    private double north;
    private double east;

    /** How many seconds at full power the way to the line takes. */
    @FunctionalInterface
    public interface Belief {
        /**
         * @param speed now (m/s)
         * @param metres to the line
         */
        double seconds(double speed, double metres);
    }

    /**
     * @param power how the hand is told the share of full power, 0 to 1
     * @param drops speed at which she falls off her foils (m/s), 0 where the hand does not know
     */
    public StartingHand(WingHand hand, DoubleConsumer power, Belief belief, double drops, StartTask task) {
        this.hand = hand;
        this.power = power;
        this.belief = belief;
        this.drops = drops;
        this.task = task;
    }

    @Override
    public WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        Pose pose = sight.state().pose();
        if (Double.isNaN(began)) {
            began = sight.time();
            north = pose.north();
            east = pose.east();
        }
        double made = (pose.north() - north) * StrictMath.cos(task.angle())
                - (pose.east() - east) * StrictMath.sin(task.angle());
        double toGun = task.gun() - (sight.time() - began);
        double left = task.metres() - made;
        double spare = left <= 0 || toGun <= 0 ? 0 : toGun - belief.seconds(sight.speed(), left);
        // Early at the speed of now already, though the gust that gave it may last: no power.
        boolean fast = drops > 0 && toGun > 0 && left < sight.speed() * (toGun + MARGIN / 2);
        double back = fast ? 0 : Double.isNaN(spare) ? 1 : share(1 - BY_SPARE * spare);
        power.accept(Math.max(back, aloft(sight.speed(), left, toGun)));
        return hand.work(sight, aim, turn, grip, dt);
    }

    /** Least share of power that keeps her on the foils, 0 where she would be early by it. */
    private double aloft(double speed, double left, double toGun) {
        boolean early = left < (drops + BAND / 2) * (toGun + MARGIN);
        return early ? 0 : share((drops + BAND - speed) / BAND);
    }

    private static double share(double value) {
        return Math.max(0, Math.min(1, value));
    }
}
