package trimwright.drills;

import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.call.Call;
import trimwright.crew.Aim;
import trimwright.crew.Sight;
import trimwright.crew.TurnOrder;
import trimwright.crew.WingHand;
import trimwright.crew.WingOrder;

/** A hand that does as it is called: what was said, the time to say it and a delay later, it moves that control for good. */
final class CalledHand implements WingHand {
    private final WingHand hand;
    private final WingSpec wing;
    private double camber;
    private double twist;
    private @Nullable Call heard;
    private double actsAt;

    CalledHand(WingHand hand, WingSpec wing) {
        this.hand = hand;
        this.wing = wing;
    }

    void hear(Call call, double actsAtTime) {
        heard = call;
        actsAt = actsAtTime;
    }

    @Override
    public WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        Call call = heard;
        if (call != null && sight.time() >= actsAt) {
            double by = Math.toRadians(call.degrees());
            switch (call.kind()) {
                case CAMBER_MORE -> camber += by;
                case CAMBER_LESS -> camber -= by;
                case TWIST_MORE -> twist += by;
                case TWIST_LESS -> twist -= by;
                case POWER_UP, EASE -> {
                    // Without load cells nobody says so.
                }
            }
            heard = null;
        }
        WingOrder order = hand.work(sight, aim, turn, grip, dt);
        int side = order.side();
        double foot = clamp(side * order.camber() + camber, 0, wing.trim().camberMax());
        double head = clamp(
                side * order.twist() + twist,
                0,
                Math.min(wing.trim().twistMax(), foot - wing.trim().headFlapMin()));
        return new WingOrder(order.sheet(), side * foot, side * head, order.flap(), side, order.inverted());
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
