package trimwright.crew;

import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.motion.Commands;
import trimwright.motion.Controls;

/**
 * A trimmer by feel, who knows no target: heel and its rate in the body, the pull of the sheet in the hand. Eases when the
 * boat heels to leeward, hauls when she comes over to windward; flattens the camber when much of the sheet has to stay out
 * and deepens it when heel is wanting; throws the camber over when the wind is seen to cross. All figures are chosen.
 *
 * <p>This hand is kept as it stands: what calls and drills are worth is judged by it.
 */
public final class FeelingHand implements WingHand {
    /** Middle of the published 0.25-0.4 s of human delay. */
    private static final double DELAY = 0.3;

    /** Heel that feels right: a little to windward (rad). */
    private static final double HEEL = Math.toRadians(2);

    /** Ease for a radian of heel off that (rad), and for a radian a second of its rate (rad s). */
    private static final double BY_HEEL = 1.0;

    private static final double BY_RATE = 1.2;
    /** Hauled or eased for good, for a radian of heel over a second (rad/s). */
    private static final double BY_TIME = 0.3;

    /** Camber at which it begins, its bounds, and how fast it is worked (rad, rad/s). */
    private static final double CAMBER = Math.toRadians(22);

    private static final double LEAST_CAMBER = Math.toRadians(10);
    private static final double MOST_CAMBER = Math.toRadians(34);
    private static final double CAMBER_RATE = Math.toRadians(0.6);

    /** Share of the camber that is twisted off (-). */
    private static final double TWISTED = 0.7;

    private final WingSpec wing;
    private final Habits habits;
    private int side;
    private double base = Double.NaN;
    private double camber = CAMBER;
    private double heel;
    private double rate;
    private double late;
    private double crossed = Double.NaN;
    private double inverted = Double.NaN;

    /**
     * @param habits of which late easing, twist and late inversion are this hand's
     * @param tack +1 with the wind from starboard, -1 from port
     */
    public FeelingHand(WingSpec wing, Habits habits, int tack) {
        this.wing = wing;
        this.habits = habits;
        side = tack;
    }

    @Override
    public WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        chooseSide(sight, turn);
        Controls now = sight.state().controls();
        if (Double.isNaN(base)) {
            base = side * now.sheet();
        }
        // What is felt comes late, as through a first-order lag of a person's delay.
        double share = dt / (DELAY + dt);
        heel += share * (side * sight.state().pose().roll() - heel);
        rate += share * (side * sight.state().rates().roll() - rate);
        double error = sight.isFlying() ? HEEL - heel : Math.max(0, Math.toRadians(-2.5) - heel);
        double most = wing.trim().sheetMax();
        boolean pulls = sight.loads().turningMoment() * side > 0;
        // Downwind and after a turn the wing is let out until it pulls, and hauled when it flogs.
        double byPull = pulls ? 0 : -Math.toRadians(3);
        base = clamp(base + (BY_TIME * error + byPull) * dt, Math.toRadians(-3), most);
        double want = clamp(base + BY_HEEL * error - BY_RATE * rate, Math.toRadians(-4), most);
        double lag = habits.lateEase() <= 0 ? 1 : dt / (habits.lateEase() + dt);
        late += lag * (want - late);
        double sheet = want > side * now.sheet() ? Math.min(want, Math.max(late, side * now.sheet())) : want;
        camber = clamp(
                camber + CAMBER_RATE * Math.signum(-error) * (Math.abs(error) > Math.toRadians(1) ? dt : 0),
                LEAST_CAMBER,
                Math.min(MOST_CAMBER, wing.trim().camberMax()));
        double twist = clamp(
                TWISTED * camber + habits.twist(),
                0,
                Math.min(wing.trim().twistMax(), camber - wing.trim().headFlapMin()));
        Commands.FlapWork flap =
                turn != null && sight.time() < inverted + 4 ? Commands.FlapWork.INVERT : Commands.FlapWork.TRIM;
        return new WingOrder(side * sheet, side * camber, side * twist, flap, side, inverted);
    }

    private void chooseSide(Sight sight, @Nullable TurnOrder turn) {
        int seen = sight.felt().angle() >= 0 ? 1 : -1;
        boolean other = turn != null
                ? seen == turn.toTack() && seen != side
                : seen != side && Math.abs(sight.felt().angle()) > Math.toRadians(10);
        if (!other) {
            crossed = Double.NaN;
            return;
        }
        if (Double.isNaN(crossed)) {
            crossed = sight.time();
        }
        if (sight.time() >= crossed + DELAY + habits.lateInversion()) {
            side = seen;
            inverted = sight.time();
            crossed = Double.NaN;
            heel = -heel;
            rate = -rate;
        }
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
