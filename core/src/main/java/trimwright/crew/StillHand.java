package trimwright.crew;

import org.jspecify.annotations.Nullable;
import trimwright.motion.Commands;
import trimwright.motion.Controls;

/** Nobody at the wing: everything stays as it stood at first. */
public final class StillHand implements WingHand {
    private @Nullable Controls first;

    @Override
    public WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        Controls stays = first;
        if (stays == null) {
            stays = sight.state().controls();
            first = stays;
        }
        return new WingOrder(
                stays.sheet(),
                stays.camber(),
                stays.twist(),
                Commands.FlapWork.TRIM,
                stays.sheet() >= 0 ? 1 : -1,
                Double.NaN);
    }
}
