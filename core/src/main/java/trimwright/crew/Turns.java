package trimwright.crew;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.units.Angles;

/**
 * Turns from the order to the word that the new course is held. Before bow or stern go through the wind the second board is
 * let down; the order counts from when the helm goes over.
 */
final class Turns {
    private static final double HALF = Math.PI / 2;
    /** Change of angle from which a change without a new tack counts as a turn (rad): chosen. */
    private static final double LARGE = Math.toRadians(30);

    private static final double PREPARATION = 4.5;
    private static final double HELD = Math.toRadians(4);
    private static final double HELD_RATE = Math.toRadians(2.5);
    /** A turn that is not done after this is given up (s). */
    private static final double TOO_LONG = 25;

    private final List<DoneTurn> done = new ArrayList<>();
    private @Nullable TurnOrder prepared;
    private @Nullable TurnOrder active;
    private double steadySince = Double.NaN;

    /**
     * How far the second board has to be down (-) before the helm goes over. In a gybe it carries only once the stern has gone
     * through the wind, by when it is down; in a tack it carries as soon as the drive goes.
     */
    static double boardNeeded(TurnKind kind) {
        return kind == TurnKind.GYBE ? 0.05 : 0.9;
    }

    Turns copy() {
        Turns other = new Turns();
        other.done.addAll(done);
        other.prepared = prepared;
        other.active = active;
        other.steadySince = steadySince;
        return other;
    }

    /** The turn under way, null in straight sailing. */
    @Nullable
    TurnOrder active() {
        return active;
    }

    /** The turn under way or being prepared. */
    @Nullable
    TurnOrder coming() {
        return active != null ? active : prepared;
    }

    /** Whether a tack or gybe is waiting or under way. */
    boolean crosses() {
        TurnOrder order = coming();
        return order != null && (order.kind() == TurnKind.TACK || order.kind() == TurnKind.GYBE);
    }

    /** Ends the turn that is waiting or under way at this time (s). */
    void end(double time) {
        TurnOrder order = coming();
        if (order != null) {
            done.add(new DoneTurn(order, time, Double.NaN));
        }
        prepared = null;
        active = null;
    }

    List<DoneTurn> done() {
        return done;
    }

    /** Takes up a wish to sail at an angle (tack-free, rad) on a tack. */
    void consider(Sight sight, int tack, double angle, TurnCause cause, boolean atMark) {
        if (coming() != null) {
            return;
        }
        double now = sight.trueWindAngle();
        TurnKind kind;
        if (now * tack < 0) {
            boolean upwind = Math.abs(now) < HALF;
            if (upwind != angle < HALF) {
                kind = upwind ? TurnKind.BEAR_AWAY : TurnKind.ROUND_UP;
            } else {
                kind = upwind ? TurnKind.TACK : TurnKind.GYBE;
            }
        } else if (Math.abs(Math.abs(now) - angle) > LARGE && (Math.abs(now) < HALF) != (angle < HALF)) {
            kind = angle > HALF ? TurnKind.BEAR_AWAY : TurnKind.ROUND_UP;
        } else {
            return;
        }
        boolean crosses = kind == TurnKind.TACK || kind == TurnKind.GYBE;
        TurnOrder order =
                new TurnOrder(kind, atMark ? TurnCause.MARK : cause, sight.time(), crosses ? tack : now >= 0 ? 1 : -1);
        if (crosses) {
            prepared = order;
        } else {
            active = order;
            steadySince = Double.NaN;
        }
    }

    /**
     * Moves on from preparing to turning to done.
     *
     * @param target heading to end on (rad)
     * @param inverted when the camber last went over (s)
     * @param board how far the second board has to be down (-); NaN for what is usual
     * @return whether a turn has just ended
     */
    boolean proceed(Sight sight, double target, double inverted, double board) {
        TurnOrder waiting = prepared;
        if (waiting != null) {
            boolean ready = Math.min(
                            sight.state().controls().portBoard(),
                            sight.state().controls().starboardBoard())
                    > (Double.isNaN(board) ? boardNeeded(waiting.kind()) : board);
            if (ready || sight.time() > waiting.start() + PREPARATION) {
                active = new TurnOrder(waiting.kind(), waiting.cause(), sight.time(), waiting.toTack());
                prepared = null;
                steadySince = Double.NaN;
            }
            return false;
        }
        TurnOrder turning = active;
        if (turning == null) {
            return false;
        }
        boolean held = Math.abs(Angles.difference(target, sight.heading())) < HELD
                && Math.abs(sight.state().rates().yaw()) < HELD_RATE;
        if (!held) {
            steadySince = Double.NaN;
        } else if (Double.isNaN(steadySince)) {
            steadySince = sight.time();
        }
        boolean ended = sight.time() - steadySince > 1.0;
        if (!ended && sight.time() < turning.start() + TOO_LONG) {
            return false;
        }
        double over = inverted >= turning.start() ? inverted : Double.NaN;
        done.add(new DoneTurn(turning, ended ? steadySince : sight.time(), over));
        active = null;
        return true;
    }
}
