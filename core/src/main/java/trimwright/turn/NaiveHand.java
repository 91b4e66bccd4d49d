package trimwright.turn;

import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.crew.Aim;
import trimwright.crew.ComputedHand;
import trimwright.crew.Sight;
import trimwright.crew.TurnOrder;
import trimwright.crew.WingOrder;
import trimwright.motion.Commands.FlapWork;

/**
 * What a trimmer does in a turn who has no plan: leaves the sheet as long as it is, so that the wing swings across
 * with the wind to the same angle on the other side, puts camber and twist over when the apparent wind crosses the bow, takes
 * up the trim of the new course once the driver says it is held. In straight sailing the computed trimmer. The yardstick of
 * every plan; not to be changed with the planner.
 */
public final class NaiveHand implements TurnHand {
    private static final double GOES_OVER = 4;

    private final ComputedHand straight;
    private final double most;
    private double sheet = Double.NaN;
    private double camber;
    private double twist;
    private int side;
    private double inverted = Double.NaN;

    /** @param straight a hand that has sailed her up to now */
    public NaiveHand(WingSpec wing, ComputedHand straight) {
        this.straight = straight.copy();
        most = wing.trim().camberMax();
    }

    @Override
    public void hear(double time) {
        // Nothing is done by the word.
    }

    @Override
    public WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        WingOrder usual = straight.work(sight, aim, turn, grip, dt);
        if (turn == null) {
            sheet = Double.NaN;
            return usual;
        }
        if (Double.isNaN(sheet)) {
            side = usual.side() == turn.toTack() && crosses(sight, turn) ? -usual.side() : usual.side();
            sheet = side * sight.state().controls().sheet();
            camber = Math.min(most, Math.abs(sight.state().controls().camber()));
            twist = Math.abs(sight.state().controls().twist());
        }
        if (turn.toTack() != side && sight.felt().angle() * side <= 0) {
            side = turn.toTack();
            inverted = sight.time();
        }
        FlapWork flap = sight.time() < inverted + GOES_OVER ? FlapWork.INVERT : FlapWork.TRIM;
        return new WingOrder(side * sheet, side * camber, side * twist, flap, side, inverted);
    }

    /** Whether the wind still has to go through bow or stern. */
    private static boolean crosses(Sight sight, TurnOrder turn) {
        return sight.tack() != turn.toTack();
    }
}
