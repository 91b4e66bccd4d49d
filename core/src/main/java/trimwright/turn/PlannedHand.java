package trimwright.turn;

import org.jspecify.annotations.Nullable;
import trimwright.boat.TrimRange;
import trimwright.boat.WingSpec;
import trimwright.crew.Aim;
import trimwright.crew.ComputedHand;
import trimwright.crew.Sight;
import trimwright.crew.TurnKind;
import trimwright.crew.TurnOrder;
import trimwright.crew.WingOrder;
import trimwright.motion.Commands.FlapWork;

/** Makes the moves of a plan by their cues, each a person's delay late; in straight sailing the computed trimmer. */
public final class PlannedHand implements TurnHand {
    private static final double GOES_OVER = 4;
    /** Flap from side to side at full oil (rad/s): as the motion model has it. */
    private static final double INVERSION = Math.toRadians(25);

    private static final double SHEET_LEAST = Math.toRadians(-4);

    /** Share of the aimed speed at which nothing more is hauled, and over which it fades before: chosen. */
    private static final double FAST = 0.97;

    private static final double FADE = 0.1;

    /** Stall margin over which what is hauled beyond the trim fades (rad): chosen. */
    private static final double STALL_FADE = Math.toRadians(3);

    /** By which the sheet is eased where a turn goes wrong, and for how long (rad, s): chosen. */
    static final double ABORT_EASE = Math.toRadians(10);

    private static final double EASED_FOR = 4;

    private final TurnMoves moves;
    private final TurnChance chance;
    private final TrimRange range;
    private final ComputedHand straight;
    private double word = Double.NaN;
    private int from;
    private double kept;
    private Cue over = new Cue();
    private Cue on = new Cue();
    private double inverted = Double.NaN;
    private double flap;
    private double eased = Double.NaN;
    private boolean isGivenUp;

    /** When something was sensed, and whether a hand's delay has passed since. */
    private static final class Cue {
        private double sensed = Double.NaN;

        void see(boolean there, double time) {
            if (Double.isNaN(sensed) && there) {
                sensed = time;
            }
        }

        boolean acts(double time, double delay) {
            return time >= sensed + delay;
        }
    }

    /** @param straight a hand that has sailed her up to now */
    public PlannedHand(TurnMoves moves, TurnChance chance, WingSpec wing, ComputedHand straight) {
        this.moves = moves;
        this.chance = chance;
        this.straight = straight.copy();
        range = wing.trim();
    }

    @Override
    public void hear(double time) {
        word = time;
        from = 0;
        over = new Cue();
        on = new Cue();
        inverted = Double.NaN;
        eased = Double.NaN;
        isGivenUp = false;
    }

    @Override
    public void giveUp(double time, TurnAbort.Action action) {
        switch (action) {
            case BACK -> isGivenUp = true;
            case EASE -> eased = time;
        }
    }

    @Override
    public double over() {
        return over.sensed;
    }

    @Override
    public double on() {
        return on.sensed;
    }

    @Override
    public WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        WingOrder order = planned(sight, aim, turn, grip, dt);
        double since = sight.time() - eased - chance.delay();
        if (!(since >= 0 && since < EASED_FOR)) {
            return order;
        }
        double sheet = order.side() * clamp(order.side() * order.sheet() + ABORT_EASE);
        return new WingOrder(sheet, order.camber(), order.twist(), order.flap(), order.side(), order.inverted());
    }

    private WingOrder planned(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        WingOrder usual = straight.work(sight, aim, turn, grip, dt);
        double now = sight.time();
        if (isGivenUp || Double.isNaN(word) || now < word + chance.delay()) {
            return usual;
        }
        if (from == 0) {
            from = usual.side();
            kept = usual.sheet();
            flap = sight.state().controls().camber();
        }
        boolean crosses = turn != null && turn.toTack() != from;
        if (!crosses && Double.isNaN(over.sensed)) {
            return onOneTack(sight, aim, usual, turn);
        }
        double wind = from * sight.felt().angle();
        over.see(wind <= moves.over(), now);
        on.see(over.acts(now, chance.delay()) && -wind >= moves.on(), now);
        if (!over.acts(now, chance.delay())) {
            double held = from * clamp(from * kept + moves.ease());
            double camber = from * Math.abs(usual.camber());
            return new WingOrder(held, camber, from * Math.abs(usual.twist()), FlapWork.TRIM, from, inverted);
        }
        int side = -from;
        if (Double.isNaN(inverted)) {
            inverted = now;
            flap = sight.state().controls().camber();
        }
        double aimed = side * Math.abs(usual.camber());
        double most = INVERSION * chance.oil() * dt;
        flap += Math.max(-most, Math.min(most, aimed - flap));
        FlapWork work = now < inverted + GOES_OVER ? FlapWork.INVERT : FlapWork.TRIM;
        if (on.acts(now, chance.delay()) && usual.side() == side) {
            double sheet = side * clamp(side * usual.sheet() - more(sight, aim));
            return new WingOrder(sheet, flap, side * Math.abs(usual.twist()), work, side, inverted);
        }
        return new WingOrder(side * moves.across(), flap, side * Math.abs(usual.twist()), work, side, inverted);
    }

    /** Bear-away and round-up, and a tack or gybe before the helm goes over. */
    private WingOrder onOneTack(Sight sight, Aim aim, WingOrder usual, @Nullable TurnOrder turn) {
        kept = usual.sheet();
        if (turn != null) {
            double before = Math.abs(sight.trueWindAngle());
            boolean away = turn.kind() == TurnKind.BEAR_AWAY;
            on.see(away ? before >= moves.on() : before <= moves.on(), sight.time());
        }
        boolean sheeted = on.acts(sight.time(), chance.delay());
        double eased = sheeted ? -more(sight, aim) : moves.ease();
        double sheet = from * clamp(from * usual.sheet() + eased);
        return new WingOrder(sheet, usual.camber(), usual.twist(), usual.flap(), usual.side(), usual.inverted());
    }

    /** What is hauled beyond the trim while she is slow (rad); none where part of the wing stalls. */
    private double more(Sight sight, Aim aim) {
        double slow = Math.max(0, Math.min(1, (FAST - sight.speed() / aim.speed()) / FADE));
        double spare = Math.max(0, Math.min(1, sight.loads().stallMargin() / STALL_FADE));
        return slow * spare * moves.power();
    }

    private double clamp(double sheet) {
        return Math.max(SHEET_LEAST, Math.min(range.sheetMax(), sheet));
    }
}
