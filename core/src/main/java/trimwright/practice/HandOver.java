package trimwright.practice;

import org.jspecify.annotations.Nullable;
import trimwright.crew.Aim;
import trimwright.crew.Sight;
import trimwright.crew.TurnOrder;
import trimwright.crew.WingHand;
import trimwright.crew.WingOrder;

/** One hand until a time, another from then on. */
record HandOver(WingHand first, WingHand then, double time) implements WingHand {
    @Override
    public WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        return (sight.time() < time ? first : then).work(sight, aim, turn, grip, dt);
    }
}
