package trimwright.crew;

import org.jspecify.annotations.Nullable;

/** Another hand, whose wing stays as it is while the sheet is eased beyond that; then it goes on. */
public final class EasedHand implements WingHand {
    private final WingHand hand;
    private final double most;
    private double ease;
    private @Nullable WingOrder kept;

    /** @param most of the sheet (rad) */
    public EasedHand(WingHand hand, double most) {
        this.hand = hand;
        this.most = most;
    }

    /** From now on that share of full power, 0 to 1. */
    public void power(double share) {
        ease = ComputedHand.easeFor(share);
    }

    @Override
    public WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        WingOrder before = kept;
        WingOrder order = before == null || ease <= 0 ? hand.work(sight, aim, turn, grip, dt) : before;
        kept = order;
        double sheet = Math.min(most, order.side() * order.sheet() + ease);
        return new WingOrder(
                order.side() * sheet, order.camber(), order.twist(), order.flap(), order.side(), order.inverted());
    }
}
