package trimwright.turn;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.crew.Aim;
import trimwright.crew.ComputedHand;
import trimwright.crew.Habits;
import trimwright.crew.Sight;
import trimwright.crew.TurnOrder;
import trimwright.crew.WingHand;
import trimwright.crew.WingOrder;

/** A hand that makes each turn of a drill by a plan's cues; in straight sailing the computed trimmer. */
public final class CuedHand implements WingHand {
    private final PlannedHand hand;
    private final List<Double> words;
    private int heard;

    /**
     * @param chance what the hand's delay is drawn from
     * @param words times at which the driver says that a turn comes (s), on the clock of what is seen
     */
    public CuedHand(TurnMoves moves, TurnChance chance, WingSpec wing, List<Double> words) {
        hand = new PlannedHand(moves, chance, wing, new ComputedHand(wing, Habits.NONE, 1));
        this.words = List.copyOf(words);
    }

    @Override
    public WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        if (heard < words.size() && sight.time() >= words.get(heard)) {
            hand.hear(sight.time());
            heard++;
        }
        return hand.work(sight, aim, turn, grip, dt);
    }
}
