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

/** A hand that holds a boat back before a start while it believes that there are seconds to spare. */
public final class StartingHand implements WingHand {
    /** Share of power given up for each second to spare (1/s): chosen. */
    private static final double BY_SPARE = 0.2;

    private final WingHand hand;
    private final DoubleConsumer power;
    private final Belief belief;
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

    /** @param power how the hand is told the share of full power, 0 to 1 */
    public StartingHand(WingHand hand, DoubleConsumer power, Belief belief, StartTask task) {
        this.hand = hand;
        this.power = power;
        this.belief = belief;
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
        power.accept(Double.isNaN(spare) ? 1 : Math.max(0, Math.min(1, 1 - BY_SPARE * spare)));
        return hand.work(sight, aim, turn, grip, dt);
    }
}
